// Whether a build stands, by how much, and what would mend it, as a report holds it. mm, rad; directions in plan.

import type { Stability } from '@cairnmark/geometry';
import * as z from 'zod/mini';
import { CLOSED_GAPS_MOST, PIECES_MOST } from '../limits.ts';
import { NOT_PREDICTED_REASONS, SIDES, STABILITY_METHODS, STABILITY_VERDICTS } from '../names.ts';
import { lengthMm, wholeBetween } from './fields.ts';
import { listOf } from './list.ts';

const piece = wholeBetween(0, PIECES_MOST);
const pieces = listOf(piece, PIECES_MOST);
const pieceOrTable = z.union([piece, z.literal('table')]);
const direction = z.tuple([z.number(), z.number()]);
const point = z.tuple([z.number(), z.number(), z.number()]);
const tilt = z.strictObject({ tiltRad: z.number(), push: z.number(), direction });

const joint = z.strictObject({
  upper: piece,
  lower: pieceOrTable,
  tipsAt: tilt,
  slidesAtRad: z.number(),
  insideMm: z.number(),
});

const failure = z.strictObject({
  pieces,
  on: z.nullable(pieceOrTable),
  hinge: z.nullable(z.strictObject({ ends: z.tuple([point, point]), towards: direction, pastMm: z.number() })),
});

const move = z.strictObject({ piece, moved: pieces, side: z.enum(SIDES), byMm: lengthMm });

export const stability: z.ZodMiniType<Stability> = z.strictObject({
  verdict: z.enum(STABILITY_VERDICTS),
  stands: z.nullable(z.boolean()),
  method: z.enum(STABILITY_METHODS),
  tipsAt: z.nullable(tilt),
  slidesAt: z.nullable(tilt),
  standsTo: z.nullable(tilt),
  joints: z.nullable(listOf(joint, PIECES_MOST)),
  first: listOf(failure, PIECES_MOST),
  rolling: pieces,
  notPredicted: listOf(z.strictObject({ piece, why: z.enum(NOT_PREDICTED_REASONS) }), PIECES_MOST),
  closedGaps: listOf(z.strictObject({ upper: piece, lower: pieceOrTable, gapMm: lengthMm }), CLOSED_GAPS_MOST),
  mend: z.nullable(move),
  steadyingMove: z.nullable(move),
});
