// Does an attempt fit its challenge: marks, answers and decisions name what the challenge has, and numbers are numbers.
// What is wrong with the layout itself, geometry tells when it measures.

import { MEASURES } from '@cairnmark/geometry';
import { MARK_MOST } from '../facts/judged.ts';
import { secondsOf } from '../instant.ts';
import type { Attempt, Challenge, Mark } from '../types.ts';
import type { Path } from './checks.ts';
import { notFinite, outOfRange, unknownMeasure } from './checks.ts';
import type { EngineIssue } from './issues.ts';

/** Everything that is wrong with the attempt, which stands at `path`; its challenge and group are looked up elsewhere. */
export function attemptIssues(attempt: Attempt, challenge: Challenge, path: Path): EngineIssue[] {
  const { heightReadingsMm, photoHeightMm } = attempt.observed;
  const measures = new Set<string>(MEASURES.map(({ id }) => id));
  return [
    ...(secondsOf(attempt.at) === null
      ? [{ code: 'time-not-valid' as const, path: [...path, 'at'], details: { at: attempt.at } }]
      : []),
    ...heightReadingsMm.flatMap((reading, k) => outOfRange(reading, [...path, 'observed', 'heightReadingsMm', k], 0)),
    ...(photoHeightMm === undefined ? [] : outOfRange(photoHeightMm, [...path, 'observed', 'photoHeightMm'], 0)),
    ...markIssues(attempt.judged, challenge, [...path, 'judged']),
    ...answerIssues(attempt, challenge, [...path, 'answers']),
    ...attempt.decisions.flatMap(({ measure, value }, k) => [
      ...unknownMeasure(measure, measures, [...path, 'decisions', k, 'measure']),
      ...outOfRange(value, [...path, 'decisions', k, 'value'], 0),
    ]),
    ...attempt.adjustments.flatMap(({ points }, k) => notFinite(points, [...path, 'adjustments', k, 'points'])),
  ];
}

function markIssues(judged: readonly Mark[], { criteria }: Challenge, path: Path): EngineIssue[] {
  return judged.flatMap(({ judge, criterion, mark }, k): EngineIssue[] => {
    const first = judged.findIndex((other) => other.judge === judge && other.criterion === criterion);
    return [
      ...(criteria.some(({ id }) => id === criterion)
        ? []
        : [{ code: 'criterion-unknown' as const, path: [...path, k, 'criterion'], details: { criterion } }]),
      ...(first === k ? [] : [{ code: 'mark-twice' as const, path: [...path, k], details: { judge, criterion } }]),
      ...outOfRange(mark, [...path, k, 'mark'], 0, MARK_MOST),
    ];
  });
}

/** An answer belongs to a rule that a person judges. */
function answerIssues({ answers }: Attempt, { requirements }: Challenge, path: Path): EngineIssue[] {
  return Object.keys(answers).flatMap((requirement): EngineIssue[] =>
    requirements.some(({ id, kind }) => id === requirement && kind === 'judged')
      ? []
      : [{ code: 'requirement-unknown', path: [...path, requirement], details: { requirement } }],
  );
}
