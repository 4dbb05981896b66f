// What one challenge brings to the day: the points of the build, points for its place, or the place itself.

import type { DayRule, Standing } from '../types.ts';

/** Points of the attempt that counts, by group. */
export type Totals = ReadonlyMap<string, number | null>;

/** Group -> what the challenge counts for it, before its weight. A group without a place has no result here. */
export function dayResults(standings: readonly Standing[], totals: Totals, rule: DayRule): ReadonlyMap<string, number> {
  const results = new Map<string, number>();
  for (const { group, place } of standings) {
    const counts = place === null ? null : countsFor(group, place, totals, rule);
    if (counts !== null) results.set(group, counts);
  }
  return results;
}

function countsFor(group: string, place: number, totals: Totals, { kind, placePoints }: DayRule): number | null {
  switch (kind) {
    case 'sum-of-points':
      return totals.get(group) ?? null;
    case 'sum-of-place-points':
      return placePoints[place - 1] ?? 0;
    case 'mean-place':
      return place;
  }
}
