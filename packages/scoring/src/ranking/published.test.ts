// Published orders, and the worked example of a tolerance that is not transitive.

import { describe, expect, it } from 'vitest';
import type { Entry, RankingKey, Standing } from '../types.ts';
import { rank } from './rank.ts';

const POINTS: RankingKey = { by: 'points', better: 'more', roundTo: 0 };

function entry(group: string, points: number, tolerance = 0): Entry {
  return {
    group,
    values: new Map([['points', { id: 'points', value: points, unit: 'points', tolerance, errors: {} }]]),
    out: [],
  };
}

function placesOf(values: readonly number[]): (number | null)[] {
  const standings = rank(
    values.map((value, k) => entry(`group ${k}`, value)),
    { first: POINTS, tieBreaks: [] },
  );
  return standings.map(({ place }) => place);
}

describe('published rankings', () => {
  it('[K1] 100, 90, 90, 80', () => {
    // "Generating competition rankings" (programming.guide); "Ranking" (Wikipedia): standard competition ranking.
    expect(placesOf([100, 90, 90, 80])).toEqual([1, 2, 2, 4]);
  });

  it('[K1] 5, 5, 4, 2, 2, 0', () => {
    // The same sources; SQL RANK (from memory).
    expect(placesOf([5, 5, 4, 2, 2, 0])).toEqual([1, 1, 3, 4, 4, 6]);
  });

  it('[K7] 101.2, 100.6, 100.0, 97 with an error of 0.8 keep four places; near pairs are marked', () => {
    // Computed: tolerance ties are not transitive; leader-anchored groups would give 1 1 3 4, chained neighbours 1 1 1 4.
    // An error of the difference of 0.8 is an error of 0.8 / root 2 for each.
    const standings = rank(
      [
        entry('A', 101.2, 0.8 / Math.SQRT2),
        entry('B', 100.6, 0.8 / Math.SQRT2),
        entry('C', 100, 0.8 / Math.SQRT2),
        entry('D', 97, 0.8 / Math.SQRT2),
      ],
      { first: POINTS, tieBreaks: [] },
    );
    expect(standings.map(near)).toEqual([
      ['A', 1, ['B']],
      ['B', 2, ['A', 'C']],
      ['C', 3, ['B']],
      ['D', 4, []],
    ]);
    expect(standings.every(({ sharedWith }) => sharedWith.length === 0)).toBe(true);
  });

  it('[K6] two readings with rulers of 1 mm are near up to 0.816497 mm', () => {
    // u = 0.288675 mm each, k = 2: U of the difference 0.816496580928 mm (JCGM 100:2008 F.2.2.1 from memory; computed).
    const each = 2 / Math.sqrt(12);
    const pair = (difference: number) =>
      rank([entry('A', 300 + difference, each), entry('B', 300, each)], { first: POINTS, tieBreaks: [] }).map(near);
    expect(pair(0.816496)).toEqual([
      ['A', 1, ['B']],
      ['B', 2, ['A']],
    ]);
    expect(pair(0.816498)).toEqual([
      ['A', 1, []],
      ['B', 2, []],
    ]);
  });
});

const near = ({ group, place, withinErrorOf }: Standing) => [group, place, withinErrorOf];
