// What a class should know of its day before it reads the places: points that do not add up to anything, judges who met
// different groups.

import type { DayWarning } from '@cairnmark/scoring';
import { dayWarnings } from '@cairnmark/scoring';
import { unitOf } from '../facts/ids.ts';
import type { Challenge, ClassRecord } from '../types.ts';

export function warningsOf({ challenges, attempts, day }: ClassRecord): readonly DayWarning[] {
  const played = challenges.map((challenge) => ({
    challenge: challenge.id,
    units: unitsOf(challenge),
    marks: attempts
      .filter((attempt) => attempt.challenge === challenge.id)
      .flatMap(({ group, judged }) => judged.map(({ judge, criterion }) => ({ group, judge, criterion }))),
  }));
  return dayWarnings(day, played);
}

/** Units of what earns points. */
const unitsOf = ({ points }: Challenge): readonly string[] => [
  ...new Set(points.map(({ measure }) => unitOf(measure))),
];
