// A challenge: what is measured, how it is scored, what a build must keep, how builds are ranked.
// Rates, limits and roundings are in the unit of the measure: mm, mm2, mm3 or a count.

import type { Challenge } from '@cairnmark/engine';
import { CONTACT_MM } from '@cairnmark/geometry';
import * as z from 'zod/mini';
import {
  FACTS_MOST,
  GAP_ALLOWANCE_MM_MOST,
  KINDS_MOST,
  MEASURING_ERROR_MM_MOST,
  POINTS_MOST,
  ROWS_MOST,
  SLACK_MM_MOST,
  VALUE_MOST,
} from '../limits.ts';
import {
  BASE_DEFINITIONS,
  CLASS_PIS,
  COMPARISONS,
  COUNTING_CONVENTIONS,
  GRADE_PRESETS,
  HEIGHT_SOURCES,
  ROUNDINGS,
  RULER_IDS,
} from '../names.ts';
import { between, id, measure, measured, name, points, text } from './fields.ts';
import { kit } from './kit.ts';
import { listOf } from './list.ts';
import { supplyRule } from './supply.ts';

const pointsRow = z.strictObject({
  id,
  measure,
  points,
  per: z.number().check(z.gt(0), z.lte(VALUE_MOST)),
  rounding: z.enum(ROUNDINGS),
  capPoints: z.exactOptional(points),
  floorPoints: z.exactOptional(points),
});

export const consequence = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('must') }),
  z.strictObject({ kind: z.literal('costs'), points: between(0, POINTS_MOST) }),
  z.strictObject({ kind: z.literal('earns'), points: between(0, POINTS_MOST) }),
]);

const requirement = z.discriminatedUnion('kind', [
  z.strictObject({
    id,
    kind: z.literal('measured'),
    measure,
    comparison: z.enum(COMPARISONS),
    limit: measured,
    consequence,
  }),
  z.strictObject({ id, kind: z.literal('judged'), text, consequence }),
  z.strictObject({
    id,
    kind: z.literal('only-kinds'),
    kinds: listOf(id, KINDS_MOST).check(z.minLength(1)),
    consequence,
  }),
  z.strictObject({ id, kind: z.literal('only-earned'), consequence }),
]);

const rankingKey = z.strictObject({ by: measure, better: z.enum(['more', 'less']), roundTo: measured });

export const challenge: z.ZodMiniType<Challenge> = z.strictObject({
  id,
  name,
  kit,
  gradePreset: z.enum(GRADE_PRESETS),
  ruler: z.enum(RULER_IDS),
  counting: z.enum(COUNTING_CONVENTIONS),
  base: z.enum(BASE_DEFINITIONS),
  gapAllowanceMm: between(CONTACT_MM, GAP_ALLOWANCE_MM_MOST),
  slackMm: between(0, SLACK_MM_MOST),
  heightCounts: listOf(z.enum(HEIGHT_SOURCES), HEIGHT_SOURCES.length).check(z.minLength(1)),
  measuringErrorMm: between(0, MEASURING_ERROR_MM_MOST),
  criteria: listOf(z.strictObject({ id, name }), ROWS_MOST),
  points: listOf(pointsRow, ROWS_MOST),
  requirements: listOf(requirement, ROWS_MOST),
  ranking: z.strictObject({ first: rankingKey, tieBreaks: listOf(rankingKey, ROWS_MOST) }),
  attemptCounts: z.enum(['best', 'last', 'chosen']),
  fallen: z.discriminatedUnion('counts', [
    z.strictObject({ counts: z.literal('out') }),
    z.strictObject({ counts: z.literal('points'), points }),
    z.strictObject({ counts: z.literal('as-measured') }),
  ]),
  own: z.strictObject({
    pi: z.enum(CLASS_PIS),
    closeShare: between(0, 1),
    rewards: listOf(z.strictObject({ measure, points }), ROWS_MOST),
  }),
  supply: z.nullable(supplyRule),
  hidden: listOf(measure, FACTS_MOST),
  labels: listOf(name, ROWS_MOST),
  bestShown: z.exactOptional(z.boolean()),
});
