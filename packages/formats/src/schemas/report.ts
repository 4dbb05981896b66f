// A report: what the engine made of one attempt. Values in the unit that stands beside them; points without unit.

import type { Report } from '@cairnmark/engine';
import * as z from 'zod/mini';
import {
  FACTS_MOST,
  GAP_ALLOWANCE_MM_MOST,
  KINDS_MOST,
  NAME_CHARACTERS_MOST,
  NOTES_MOST,
  PIECES_MOST,
  ROWS_MOST,
} from '../limits.ts';
import { COMPARISONS, FACT_SOURCES, MEASURE_IDS, OWN_VERDICTS, SLIPS, VERDICTS } from '../names.ts';
import { adjustment, attemptState, decision } from './attempt.ts';
import { consequence } from './challenge.ts';
import { errors, fact, tolerance, unit } from './facts.ts';
import { between, id, instant, measure, measured, name, positionMm, text, wholeBetween } from './fields.ts';
import { listOf } from './list.ts';
import { stability } from './stability.ts';
import { supply } from './supply.ts';

const reportedFact = z.strictObject({
  id: measure,
  unit,
  value: z.nullable(z.number()),
  tolerance,
  errors,
  source: z.nullable(z.enum(FACT_SOURCES)),
  predicted: z.nullable(fact),
  observed: z.nullable(z.strictObject({ value: z.number(), tolerance, readings: listOf(z.number(), NOTES_MOST) })),
  decided: z.nullable(decision),
});

const requirementLine = z.strictObject({
  requirement: id,
  verdict: z.enum(VERDICTS),
  measure: z.nullable(measure),
  value: z.nullable(z.number()),
  comparison: z.nullable(z.enum(COMPARISONS)),
  limit: z.nullable(measured),
  breaches: listOf(
    z.strictObject({ kind: id, used: wholeBetween(0, PIECES_MOST), allowed: wholeBetween(0, PIECES_MOST) }),
    KINDS_MOST,
  ),
  note: z.nullable(text),
  consequence,
});

const pointsLine = z.strictObject({
  row: id,
  measure,
  value: z.nullable(z.number()),
  times: z.nullable(z.number()),
  points: z.nullable(z.number()),
  limited: z.nullable(z.enum(['cap', 'floor'])),
});

const ownLine = z.strictObject({
  measure: z.enum(MEASURE_IDS),
  own: measured,
  expected: z.nullable(z.number()),
  source: z.nullable(z.enum(FACT_SOURCES)),
  tolerance,
  verdict: z.enum(OWN_VERDICTS),
  slip: z.nullable(z.enum(SLIPS)),
  points: z.number(),
});

export const report: z.ZodMiniType<Report> = z.strictObject({
  engineVersion: z.string().check(z.minLength(1), z.maxLength(NAME_CHARACTERS_MOST)),
  challenge: id,
  group: id,
  attempt: id,
  at: instant,
  chosen: z.boolean(),
  state: attemptState,
  confirmedBy: z.nullable(name),
  facts: listOf(reportedFact, FACTS_MOST),
  gaps: listOf(
    z.strictObject({ at: z.tuple([positionMm, positionMm]), widthMm: between(0, GAP_ALLOWANCE_MM_MOST) }),
    PIECES_MOST,
  ),
  stability: z.nullable(stability),
  stockBreaches: listOf(
    z.strictObject({ kind: id, used: wholeBetween(0, PIECES_MOST), stock: wholeBetween(0, PIECES_MOST) }),
    KINDS_MOST,
  ),
  requirements: listOf(requirementLine, ROWS_MOST),
  points: listOf(pointsLine, ROWS_MOST),
  adjustments: listOf(adjustment, NOTES_MOST),
  own: listOf(ownLine, FACTS_MOST),
  supply: z.nullable(supply),
  total: z.nullable(z.number()),
});
