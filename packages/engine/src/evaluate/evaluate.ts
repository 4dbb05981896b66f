// One attempt of one group at one challenge, evaluated: layout -> facts, stability -> requirements and points -> report.
// Pure: the same input gives the same report on every machine.

import type { Result } from '@cairnmark/geometry';
import { failure } from '@cairnmark/geometry';
import type { SupplyEvent } from '@cairnmark/scoring';
import { attemptIssues } from '../check/attempt.ts';
import { challengeIssues } from '../check/challenge.ts';
import type { EngineIssue } from '../check/issues.ts';
import { ownSizeIssues } from '../check/kit.ts';
import { supplyEventIssues } from '../check/supply.ts';
import type { Report } from '../report-types.ts';
import type { Statics } from '../stability/statics.ts';
import type { Attempt, Challenge, Group } from '../types.ts';
import { reportOf } from './report.ts';

/** Where an attempt belongs. `events`: the strokes of all supply lists of the challenge; none without a supply game. */
export interface Belonging {
  readonly challenge: Challenge;
  readonly group: Group;
  readonly events: readonly SupplyEvent[];
}

/**
 * The report on an attempt, or everything that is wrong. Paths begin with "attempt", "challenge", "group" or "events".
 * Throws RangeError when the attempt is of another challenge or group than those handed in.
 */
export function evaluate(attempt: Attempt, belonging: Belonging, statics: Statics): Result<Report, EngineIssue> {
  const { challenge, group, events } = belonging;
  if (attempt.challenge !== challenge.id) throw new RangeError(`the attempt is of ${attempt.challenge}`);
  if (attempt.group !== group.id) throw new RangeError(`the attempt is of the group ${attempt.group}`);
  const issues = [
    ...challengeIssues(challenge, ['challenge']),
    ...ownSizeIssues(group, [challenge.kit], ['group']),
    ...attemptIssues(attempt, challenge, ['attempt']),
    ...supplyEventIssues(events, challenge, ['events']),
  ];
  if (issues.length > 0) return failure(issues);
  return reportOf(attempt, { ...belonging, statics, path: ['attempt'] });
}
