// Layouts as files hold them: laid out, traced, or numbers only.

import * as z from 'zod/mini';
import {
  LENGTH_MM_MOST,
  MASS_G_LEAST,
  MASS_G_MOST,
  OUTLINE_POINTS_MOST,
  OUTLINES_MOST,
  PIECES_MOST,
} from '../limits.ts';
import { HOLDS } from '../names.ts';
import { between, id, lengthMm, positionMm, turnRad } from './fields.ts';
import { listOf } from './list.ts';

const point = z.tuple([positionMm, positionMm]);

const outline = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('polygon'), points: listOf(point, OUTLINE_POINTS_MOST).check(z.minLength(3)) }),
  z.strictObject({ kind: z.literal('disc'), centre: point, radiusMm: between(0, LENGTH_MM_MOST) }),
]);

const laidPiece = z.strictObject({
  kind: id,
  resting: id,
  xMm: positionMm,
  yMm: positionMm,
  turnRad,
  on: z.exactOptional(z.literal('table')),
  held: z.exactOptional(z.enum(HOLDS)),
  weighed: z.exactOptional(
    z.strictObject({ massG: between(MASS_G_LEAST, MASS_G_MOST), centreMm: z.exactOptional(lengthMm) }),
  ),
});

const tracedOutline = z.strictObject({ outline, planeMm: lengthMm, onTable: z.boolean() });

export const layout = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('laid-out'),
    pieces: listOf(laidPiece, PIECES_MOST),
    traced: z.exactOptional(z.literal(true)),
  }),
  z.strictObject({
    kind: z.literal('traced'),
    outlines: listOf(tracedOutline, OUTLINES_MOST),
    pieces: listOf(id, PIECES_MOST),
    heightMm: z.exactOptional(lengthMm),
  }),
  z.strictObject({ kind: z.literal('numbers-only'), pieces: listOf(id, PIECES_MOST) }),
]);
