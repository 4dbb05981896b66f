import { describe, expect, it } from 'vitest';
import type { Entry, OutReason, RankingKey, RankingRule, Standing } from '../types.ts';
import { rank } from './rank.ts';

const HEIGHT: RankingKey = { by: 'height', better: 'more', roundTo: 10 };
const FEWER_PIECES: RankingKey = { by: 'pieces', better: 'less', roundTo: 0 };
const BASE: RankingKey = { by: 'base-area', better: 'less', roundTo: 100 };

function entry(
  group: string,
  values: Readonly<Record<string, number | null>>,
  out: readonly OutReason[] = [],
  tolerance = 0,
): Entry {
  const facts = Object.entries(values).map(
    ([id, value]) => [id, { id, value, unit: 'mm', tolerance, errors: {} }] as const,
  );
  return { group, values: new Map(facts), out };
}

function rule(first: RankingKey, ...tieBreaks: readonly RankingKey[]): RankingRule {
  return { first, tieBreaks };
}

const placed = (standings: readonly Standing[]) => standings.map(({ group, place }) => [group, place]);

describe('places', () => {
  it('[K2] equal rounded values share a place and each other', () => {
    const standings = rank(
      [entry('terns', { height: 354 }), entry('puffins', { height: 346.2 }), entry('eiders', { height: 355 })],
      rule(HEIGHT),
    );
    expect(standings.map(({ group, place, sharedWith }) => [group, place, sharedWith])).toEqual([
      ['eiders', 1, []],
      ['puffins', 2, ['terns']],
      ['terns', 2, ['puffins']],
    ]);
    expect(standings[0]?.decidedBy).toEqual([{ by: 'height', value: 360 }]);
  });

  it('[K2] decimals that are equal on paper share a place', () => {
    const standings = rank(
      [entry('b', { height: 0.1 + 0.2 }), entry('a', { height: 0.3 })],
      rule({ ...HEIGHT, roundTo: 0 }),
    );
    expect(placed(standings)).toEqual([
      ['a', 1],
      ['b', 1],
    ]);
  });

  it('[K3] tie-breaks go in order, and only between equals', () => {
    const standings = rank(
      [
        entry('a', { height: 350, pieces: 7, 'base-area': 900 }),
        entry('b', { height: 350, pieces: 5, 'base-area': 2500 }),
        entry('c', { height: 350, pieces: 5, 'base-area': 1700 }),
        entry('d', { height: 350, pieces: 5, 'base-area': 1710 }),
        entry('e', { height: 340, pieces: 3, 'base-area': 100 }),
      ],
      rule(HEIGHT, FEWER_PIECES, BASE),
    );
    expect(placed(standings)).toEqual([
      ['c', 1],
      ['d', 1],
      ['b', 3],
      ['a', 4],
      ['e', 5],
    ]);
    expect(standings[2]?.decidedBy.map(({ value }) => value)).toEqual([350, 5, 2500]);
  });

  it('[K4] less is better where the rule says so', () => {
    const standings = rank([entry('a', { pieces: 7 }), entry('b', { pieces: 5 })], rule(FEWER_PIECES));
    expect(placed(standings)).toEqual([
      ['b', 1],
      ['a', 2],
    ]);
  });

  it('[K5] among equals the list goes by id, at the same place', () => {
    const standings = rank(
      ['c', 'a', 'B'].map((group) => entry(group, { height: 70 })),
      rule(HEIGHT),
    );
    expect(placed(standings)).toEqual([
      ['B', 1],
      ['a', 1],
      ['c', 1],
    ]);
    expect(standings[0]?.sharedWith).toEqual(['a', 'c']);
  });
});

describe('within measuring error', () => {
  const near = (standings: readonly Standing[]) => standings.map(({ group, withinErrorOf }) => [group, withinErrorOf]);
  const exactHeight = { ...HEIGHT, roundTo: 0 };

  it('[K6] the boundary belongs to it: 0.3 and 0.4 make 0.5', () => {
    const pair = (difference: number) =>
      rank(
        [entry('a', { height: 200 + difference }, [], 0.3), entry('b', { height: 200 }, [], 0.4)],
        rule(exactHeight),
      );
    expect(near(pair(0.5))).toEqual([
      ['a', ['b']],
      ['b', ['a']],
    ]);
    expect(near(pair(0.500001))).toEqual([
      ['a', []],
      ['b', []],
    ]);
  });

  it('[K6] looks at the values before rounding', () => {
    // 354.9 and 355.1 are 350 and 360 on the board; 346 and 354 share 350 and are 8 apart.
    const standings = rank(
      [entry('a', { height: 355.1 }, [], 3), entry('b', { height: 354.9 }, [], 3), entry('c', { height: 346 }, [], 3)],
      rule(HEIGHT),
    );
    expect(near(standings)).toEqual([
      ['a', ['b']],
      ['b', ['a']],
      ['c', []],
    ]);
  });

  it('[K6] groups that share a place are not marked, groups that only a tie-break parted are', () => {
    const standings = rank(
      [
        entry('a', { height: 350, pieces: 5 }, [], 3),
        entry('b', { height: 350, pieces: 7 }, [], 3),
        entry('c', { height: 351, pieces: 7 }, [], 3),
      ],
      rule(HEIGHT, FEWER_PIECES),
    );
    expect(near(standings)).toEqual([
      ['a', ['b', 'c']],
      ['b', ['a']],
      ['c', ['a']],
    ]);
  });

  it('[K6] without any tolerance nothing is marked, not even equal counts', () => {
    const standings = rank(
      [entry('a', { pieces: 5, height: 350 }), entry('b', { pieces: 5, height: 340 })],
      rule(FEWER_PIECES, HEIGHT),
    );
    expect(near(standings)).toEqual([
      ['a', []],
      ['b', []],
    ]);
  });

  it('[K6] one wide tolerance reaches past near ones', () => {
    const tolerances: [string, number, number][] = [
      ['a', 400, 1],
      ['b', 395, 1],
      ['c', 390, 20],
      ['d', 371, 1],
    ];
    const standings = rank(
      tolerances.map(([group, height, tolerance]) => entry(group, { height }, [], tolerance)),
      rule(exactHeight),
    );
    expect(near(standings)).toEqual([
      ['a', ['c']],
      ['b', ['c']],
      ['c', ['a', 'b', 'd']],
      ['d', ['c']],
    ]);
  });

  it('[K6] [K8] a group that is out is near nobody', () => {
    const standings = rank(
      [entry('a', { height: 350 }, [], 3), entry('b', { height: 351 }, [{ code: 'fell' }], 3)],
      rule(exactHeight),
    );
    expect(near(standings)).toEqual([
      ['a', []],
      ['b', []],
    ]);
  });
});

describe('who takes no place', () => {
  it('[K8] stands at the end with the reason and counts for nobody', () => {
    const broken: readonly OutReason[] = [
      { code: 'rule-broken', requirements: ['no-tape'] },
      { code: 'more-than-the-kit-has', kinds: ['drum'] },
    ];
    const standings = rank(
      [
        entry('puffins', { height: 900 }, broken),
        entry('terns', { height: 310 }),
        entry('fulmars', {}, [{ code: 'absent' }]),
        entry('eiders', { height: 290 }),
      ],
      rule(HEIGHT),
    );
    expect(placed(standings)).toEqual([
      ['terns', 1],
      ['eiders', 2],
      ['fulmars', null],
      ['puffins', null],
    ]);
    expect(standings.map(({ out }) => out)).toEqual([[], [], [{ code: 'absent' }], broken]);
    expect(standings[3]?.decidedBy).toEqual([{ by: 'height', value: 900 }]);
  });

  it('[K9] a first measure that was not measured takes no place', () => {
    const standings = rank([entry('a', { height: null }), entry('b', {}), entry('c', { height: 0 })], rule(HEIGHT));
    expect(placed(standings)).toEqual([
      ['c', 1],
      ['a', null],
      ['b', null],
    ]);
    expect(standings[1]?.out).toEqual([{ code: 'not-measured', measures: ['height'] }]);
    expect(standings[2]?.out).toEqual([{ code: 'not-measured', measures: ['height'] }]);
  });

  it('[K10] in a tie-break the unmeasured come last, and are equal', () => {
    const standings = rank(
      [
        entry('a', { height: 70, pieces: null }),
        entry('b', { height: 70 }),
        entry('c', { height: 70, pieces: 99 }),
        entry('d', { height: 60, pieces: 1 }),
      ],
      rule(HEIGHT, FEWER_PIECES),
    );
    expect(placed(standings)).toEqual([
      ['c', 1],
      ['a', 2],
      ['b', 2],
      ['d', 4],
    ]);
    expect(standings[1]?.decidedBy[1]).toEqual({ by: 'pieces', value: null });
  });
});
