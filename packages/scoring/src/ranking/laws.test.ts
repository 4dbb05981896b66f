// Laws of ranking, on classes whose heights and errors are whole millionths, so that a slow count can check them.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { share } from '../../../../tests/tools/share.ts';
import { pointsLines } from '../points/lines.ts';
import type { Entry, Facts, PointsRow, RankingRule, Standing } from '../types.ts';
import { leaders, rank } from './rank.ts';

const runs = share(10_000, 500);
const STEP = 10_000_000; // 10 mm in millionths

interface Build {
  readonly height: number;
  readonly pieces: number | null;
  readonly tolerance: number;
  readonly out: boolean;
}

/** Heights crowd round a few steps, so that ties, near ties and exact halves are common. All in millionths. */
const build: fc.Arbitrary<Build> = fc.record({
  height: fc.oneof(
    fc.integer({ min: 0, max: 60_000_000 }),
    fc.constantFrom(5_000_000, 14_999_999, 15_000_000, 20_000_000, 20_000_001, 24_999_999),
  ),
  pieces: fc.option(fc.integer({ min: 3, max: 5 }), { freq: 5 }),
  tolerance: fc.constantFrom(0, 300_000, 400_000, 3_000_000, 7_000_000),
  out: fc.constantFrom(false, false, false, true),
});
const klass = fc.array(build, { minLength: 1, maxLength: 9 });

const RULE: RankingRule = {
  first: { by: 'height', better: 'more', roundTo: STEP / 1e6 },
  tieBreaks: [{ by: 'pieces', better: 'less', roundTo: 0 }],
};

const fact = (id: string, value: number | null, tolerance = 0) =>
  [id, { id, value, unit: 'mm', tolerance, errors: {} }] as const;

function entryOf({ height, pieces, tolerance, out }: Build, k: number): Entry {
  const values: Facts = new Map([fact('height', height / 1e6, tolerance / 1e6), fact('pieces', pieces)]);
  return { group: `g${k}`, values, out: out ? [{ code: 'fell' }] : [] };
}

describe('laws of ranking', () => {
  it('[K1] [K2] [K3] [K8] a place is 1 plus the number of those strictly better, counted slowly (seed 4131)', () => {
    fc.assert(
      fc.property(klass, (builds) => {
        const standings = byGroup(rank(builds.map(entryOf), RULE));
        for (const [k, mine] of builds.entries()) {
          const better = builds.filter((other) => !other.out && slowlyBetter(other, mine)).length;
          expect(standings.get(`g${k}`)?.place).toBe(mine.out ? null : better + 1);
        }
      }),
      { seed: 4131, numRuns: runs },
    );
  });

  it('[K1] the leaders are those at the first place (seed 4138)', () => {
    fc.assert(
      fc.property(klass, (builds) => {
        const ranked = rank(builds.map(entryOf), RULE).filter(({ place }) => place === 1);
        const names = leaders(builds.map(entryOf), RULE).map(({ group }) => group);
        expect([...names].sort()).toEqual(ranked.map(({ group }) => group).sort());
      }),
      { seed: 4138, numRuns: runs },
    );
  });

  it('[K6] near pairs are those that a slow look at all pairs finds (seed 4132)', () => {
    fc.assert(
      fc.property(klass, (builds) => {
        const standings = byGroup(rank(builds.map(entryOf), RULE));
        for (const [k, mine] of builds.entries()) {
          const expected = builds.flatMap((other, n) => (n !== k && slowlyNear(mine, other) ? [`g${n}`] : []));
          expect(standings.get(`g${k}`)?.withinErrorOf).toEqual(expected);
        }
      }),
      { seed: 4132, numRuns: runs },
    );
  });

  it('[K5] the order of entry changes nothing (seed 4133)', () => {
    const shuffled = klass.chain((builds) => {
      const entries = builds.map(entryOf);
      return fc.tuple(fc.constant(entries), fc.shuffledSubarray(entries, { minLength: entries.length }));
    });
    fc.assert(
      fc.property(shuffled, ([entries, other]) => {
        expect(rank(other, RULE)).toEqual(rank(entries, RULE));
      }),
      { seed: 4133, numRuns: runs },
    );
  });

  it('[K5] names decide no place (seed 4134)', () => {
    fc.assert(
      fc.property(klass, (builds) => {
        const renamed = builds.map((one, k) => ({ ...entryOf(one, k), group: `x${builds.length - k}` }));
        const [before, after] = [byGroup(rank(builds.map(entryOf), RULE)), byGroup(rank(renamed, RULE))];
        for (const k of builds.keys()) {
          expect(after.get(`x${builds.length - k}`)?.place).toBe(before.get(`g${k}`)?.place);
        }
      }),
      { seed: 4134, numRuns: runs },
    );
  });

  it("[K1] one more group changes nobody's order (seed 4135)", () => {
    fc.assert(
      fc.property(klass, build, (builds, more) => {
        const before = byGroup(rank(builds.map(entryOf), RULE));
        const after = byGroup(rank([...builds, more].map(entryOf), RULE));
        for (const [mine, theirs] of pairs(builds.length)) {
          expect(order(after, mine, theirs)).toBe(order(before, mine, theirs));
        }
      }),
      { seed: 4135, numRuns: runs },
    );
  });

  it('[K1] [K4] a better first value never drops a place (seed 4136)', () => {
    fc.assert(
      fc.property(klass, fc.integer({ min: 0, max: 30_000_000 }), (builds, gain) => {
        const taller = builds.map((one, k) => (k === 0 ? { ...one, height: one.height + gain } : one));
        const [before, after] = [byGroup(rank(builds.map(entryOf), RULE)), byGroup(rank(taller.map(entryOf), RULE))];
        expect(after.get('g0')?.place ?? 0).toBeLessThanOrEqual(before.get('g0')?.place ?? 0);
      }),
      { seed: 4136, numRuns: runs },
    );
  });

  it('[P1] [K1] points multiplied by k in every row change no place (seed 4137)', () => {
    const rates = fc.array(fc.integer({ min: -5, max: 9 }), { minLength: 2, maxLength: 2 });
    fc.assert(
      fc.property(klass, rates, fc.integer({ min: 2, max: 12 }), (builds, [forHeight = 0, forPieces = 0], k) => {
        const ranked = (factor: number) => {
          const rows: PointsRow[] = [
            { id: 'a', measure: 'height', points: forHeight * factor, per: 7, rounding: 'none' },
            { id: 'b', measure: 'pieces', points: forPieces * factor, per: 1, rounding: 'none' },
          ];
          const entries = builds.map(entryOf).map((one): Entry => {
            return { ...one, values: new Map([fact('points', pointsLines(rows, one.values).sum)]) };
          });
          return rank(entries, { first: { by: 'points', better: 'more', roundTo: 0 }, tieBreaks: [] });
        };
        expect(ranked(k).map(({ group, place }) => [group, place])).toEqual(
          ranked(1).map(({ group, place }) => [group, place]),
        );
      }),
      { seed: 4137, numRuns: runs },
    );
  });
});

const byGroup = (standings: readonly Standing[]) => new Map(standings.map((standing) => [standing.group, standing]));

const pairs = (n: number): [number, number][] =>
  Array.from({ length: n * n }, (_, k): [number, number] => [k % n, Math.floor(k / n)]);

/** -1, 0 or 1 as the first is before, level with or behind the second; 2 when one of them is out. */
function order(standings: ReadonlyMap<string, Standing>, a: number, b: number): number {
  const [mine, theirs] = [standings.get(`g${a}`)?.place ?? null, standings.get(`g${b}`)?.place ?? null];
  return mine === null || theirs === null ? 2 : Math.sign(mine - theirs);
}

const slowHeight = ({ height }: Build): number => Math.floor((height + STEP / 2) / STEP);
const slowPieces = ({ pieces }: Build): number => pieces ?? Number.POSITIVE_INFINITY;

function slowlyBetter(a: Build, b: Build): boolean {
  return slowHeight(a) > slowHeight(b) || (slowHeight(a) === slowHeight(b) && slowPieces(a) < slowPieces(b));
}

/** All numbers are below 2^53: 60 000 000 squared is 3.6e15. */
function slowlyNear(a: Build, b: Build): boolean {
  const samePlace = !slowlyBetter(a, b) && !slowlyBetter(b, a);
  const errorSq = a.tolerance ** 2 + b.tolerance ** 2;
  return !a.out && !b.out && !samePlace && errorSq > 0 && (a.height - b.height) ** 2 <= errorSq;
}
