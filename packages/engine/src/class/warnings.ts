// What a class should know of its day before it reads the places: points that do not add up to anything, judges who met
// different groups.

import type { DayWarning } from '@cairnmark/scoring';
import { dayWarnings } from '@cairnmark/scoring';
import { unitOf } from '../facts/ids.ts';
import type { CountingReports } from '../standings/counting.ts';
import type { Challenge, ClassRecord } from '../types.ts';

/** `counting`: by challenge id. Marks of a try that does not count judged nothing that does. */
export function warningsOf(
  { challenges, attempts, day }: ClassRecord,
  counting: ReadonlyMap<string, CountingReports>,
): readonly DayWarning[] {
  const played = challenges.map((challenge) => {
    const reports = [...(counting.get(challenge.id)?.values() ?? [])].filter((report) => report !== null);
    const counted = new Set(reports.map(({ attempt }) => attempt));
    return {
      challenge: challenge.id,
      units: unitsOf(challenge),
      marks: attempts
        .filter(({ id }) => counted.has(id))
        .flatMap(({ group, judged }) => judged.map(({ judge, criterion }) => ({ group, judge, criterion }))),
    };
  });
  return dayWarnings(day, played);
}

/** Units of what earns points. */
const unitsOf = ({ points }: Challenge): readonly string[] => [
  ...new Set(points.map(({ measure }) => unitOf(measure))),
];
