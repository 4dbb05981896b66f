// "Who would have won?": a copy of the challenge that the points decide, with all that was built under it, and both rankings
// side by side. The class itself stays as it is until somebody keeps the copy.

import type { Challenge, ClassRecord, ClassScore } from '@cairnmark/engine';
import { underPoints } from '@cairnmark/engine';
import type { CountingConvention } from '@cairnmark/geometry';
import type { PointsRow, Standing } from '@cairnmark/scoring';
import { addWithBuilds, copyOf } from '../../store/challenge-copies.ts';
import type { Change } from '../../store/class-changes.ts';

export interface Retried {
  readonly copy: Challenge;
  /** Adds it behind the challenge it is a copy of. */
  readonly add: Change;
}

export function withPoints(
  record: ClassRecord,
  challenge: Challenge,
  points: readonly PointsRow[],
  counting: CountingConvention,
): Retried {
  const copy = underPoints(copyOf(record, challenge), points, counting);
  return { copy, add: addWithBuilds(copy, challenge.id) };
}

export interface SideBySide {
  readonly group: string;
  readonly before: Standing;
  readonly after: Standing;
}

/** In the order of the places by the new points, those without a place last. */
export function sideBySide(score: ClassScore, challenge: Challenge, copy: Challenge): readonly SideBySide[] {
  const before = score.standings.get(challenge.id) ?? [];
  return (score.standings.get(copy.id) ?? []).flatMap((after) => {
    const same = before.find(({ group }) => group === after.group);
    return same === undefined ? [] : [{ group: after.group, before: same, after }];
  });
}

/** Groups at the first place; [] where nobody is ranked. */
export const firstOf = (standings: readonly Standing[]): readonly string[] =>
  standings.filter(({ place }) => place === 1).map(({ group }) => group);
