// A class: groups, challenges, attempts and the rule of the day; all that is kept and moved.

import type { ClassRecord } from '@cairnmark/engine';
import * as z from 'zod/mini';
import { ATTEMPTS_MOST, CHALLENGES_MOST, GROUPS_MOST, POINTS_MOST } from '../limits.ts';
import { attempt } from './attempt.ts';
import { challenge } from './challenge.ts';
import { between, byId, id, name, points } from './fields.ts';
import { sizes } from './kit.ts';
import { listOf } from './list.ts';
import { supplies } from './supply.ts';

const dayRule = z.strictObject({
  kind: z.enum(['sum-of-points', 'sum-of-place-points', 'mean-place']),
  placePoints: listOf(points, GROUPS_MOST),
  weights: byId(between(0, POINTS_MOST)),
  meanOfThosePresent: z.boolean(),
});

export const classRecord: z.ZodMiniType<ClassRecord> = z.strictObject({
  name,
  invented: z.boolean(),
  groups: listOf(z.strictObject({ id, name, measured: byId(sizes) }), GROUPS_MOST),
  challenges: listOf(challenge, CHALLENGES_MOST),
  attempts: listOf(attempt, ATTEMPTS_MOST),
  supplies,
  day: dayRule,
});
