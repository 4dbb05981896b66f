// Does an attempt fit its challenge: marks, answers and decisions name what the challenge has, and numbers are numbers.
// Pieces are of kinds that the kit has. What else is wrong with a layout, geometry tells when it measures.

import type { Layout } from '@cairnmark/geometry';
import { DECIDABLE } from '../facts/ids.ts';
import { piecesUsed } from '../facts/pieces.ts';
import { LENGTH_MM_MOST, MARK_MOST, VALUE_MOST } from '../limits.ts';
import type { Attempt, Challenge, Kit, Mark, OwnResult } from '../types.ts';
import type { Path } from './checks.ts';
import { noTime, outOfRange, pointsOutOfRange, unknownMeasure } from './checks.ts';
import type { EngineIssue } from './issues.ts';

/** Everything that is wrong with the attempt, which stands at `path`; its challenge and group are looked up elsewhere. */
export function attemptIssues(attempt: Attempt, challenge: Challenge, path: Path): EngineIssue[] {
  const { heightReadingsMm, photoHeightMm } = attempt.observed;
  return [
    ...noTime(attempt.at, [...path, 'at']),
    ...pieceIssues(attempt.layout, challenge.kit, [...path, 'layout', 'pieces']),
    ...heightReadingsMm.flatMap((reading, k) =>
      outOfRange(reading, [...path, 'observed', 'heightReadingsMm', k], 0, LENGTH_MM_MOST),
    ),
    ...(photoHeightMm === undefined
      ? []
      : outOfRange(photoHeightMm, [...path, 'observed', 'photoHeightMm'], 0, LENGTH_MM_MOST)),
    ...markIssues(attempt.judged, challenge, [...path, 'judged']),
    ...answerIssues(attempt, challenge, [...path, 'answers']),
    ...attempt.decisions.flatMap(({ measure, value, at }, k) => [
      ...noTime(at, [...path, 'decisions', k, 'at']),
      ...unknownMeasure(measure, DECIDABLE, [...path, 'decisions', k, 'measure']),
      ...outOfRange(value, [...path, 'decisions', k, 'value'], 0, VALUE_MOST),
    ]),
    ...ownIssues(attempt.own, [...path, 'own']),
    ...attempt.adjustments.flatMap(({ points }, k) => pointsOutOfRange(points, [...path, 'adjustments', k, 'points'])),
  ];
}

function pieceIssues(layout: Layout, { kinds }: Kit, path: Path): EngineIssue[] {
  const known = new Set(kinds.map(({ id }) => id));
  const within = layout.kind === 'laid-out' ? ['kind'] : [];
  return piecesUsed(layout).flatMap((kind, k): EngineIssue[] =>
    known.has(kind) ? [] : [{ code: 'kind-unknown', path: [...path, k, ...within], details: { kind } }],
  );
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

function ownIssues(own: readonly OwnResult[], path: Path): EngineIssue[] {
  const measures = own.map(({ measure }) => measure);
  return own.flatMap(({ measure, value }, k): EngineIssue[] => [
    ...(measures.indexOf(measure) === k
      ? []
      : [{ code: 'own-twice' as const, path: [...path, k, 'measure'], details: { measure } }]),
    ...outOfRange(value, [...path, k, 'value'], 0, VALUE_MOST),
  ]);
}

/** An answer belongs to a rule that a person judges. */
function answerIssues({ answers }: Attempt, { requirements }: Challenge, path: Path): EngineIssue[] {
  return Object.keys(answers).flatMap((requirement): EngineIssue[] =>
    requirements.some(({ id, kind }) => id === requirement && kind === 'judged')
      ? []
      : [{ code: 'requirement-unknown', path: [...path, requirement], details: { requirement } }],
  );
}
