// Decimals that a double cannot hold never decide a place, in any unit of the class and however many readings are added.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { share } from '../../../../tests/tools/share.ts';
import { pointsLines } from '../points/lines.ts';
import type { Entry, RankingKey } from '../types.ts';
import { rank } from './rank.ts';

const runs = share(10_000, 500);
const KEY: RankingKey = { by: 'height', better: 'more', roundTo: 0 };

const fact = (id: string, value: number) => [id, { id, value, unit: 'mm', tolerance: 0, errors: {} }] as const;
const entry = (group: string, height: number): Entry => ({
  group,
  values: new Map([fact('height', height)]),
  out: [],
});
const places = (entries: readonly Entry[], key = KEY) =>
  new Map(rank(entries, { first: key, tieBreaks: [] }).map(({ group, place }) => [group, place]));
const added = (terms: readonly number[]): number => terms.reduce((sum, term) => sum + term, 0);

/** Steps of rulers and scales in mm, in millionths: 0.1 and 0.3, 1 cm, an eighth and a sixteenth of an inch. */
const STEPS: Readonly<Record<string, number>> = {
  '0.1': 100_000,
  '0.3': 300_000,
  '1 mm': 1_000_000,
  '1 cm': 10_000_000,
  'an eighth of an inch': 3_175_000,
  'a sixteenth of an inch': 1_587_500,
};

describe('decimals', () => {
  it('[R1] [K2] 0.1 + 0.2 never decides a place', () => {
    expect(0.1 + 0.2 > 0.3).toBe(true);
    expect(0.1 + 0.7 < 0.8).toBe(true);
    const shared = places([entry('added', 0.1 + 0.2), entry('written', 0.3)]);
    expect([shared.get('added'), shared.get('written')]).toEqual([1, 1]);
    const less = places([entry('added', 0.1 + 0.7), entry('written', 0.8)], { ...KEY, better: 'less' });
    expect([less.get('added'), less.get('written')]).toEqual([1, 1]);
  });

  it.each(Object.entries(STEPS))(
    '[R4] [K2] many readings in steps of %s, added in any order (seed 4151)',
    (_, step) => {
      const readings = fc.array(fc.integer({ min: 1, max: 500 }), { minLength: 3, maxLength: 60 });
      const roundTo = fc.constantFrom(0, step / 1e6, 1, 10, 1.5875);
      fc.assert(
        fc.property(readings, roundTo, (counts, to) => {
          const terms = counts.map((count) => count * (step / 1e6));
          const exact = (added(counts) * step) / 1e6;
          const entries = [
            entry('forwards', added(terms)),
            entry('backwards', added([...terms].reverse())),
            entry('one by one', added(counts.flatMap((count) => Array(count).fill(step / 1e6)))),
            entry('written', exact),
          ];
          const found = places(entries, { ...KEY, roundTo: to });
          expect([...found.values()]).toEqual([1, 1, 1, 1]);
          for (const { values } of entries) {
            for (const rounding of ['down', 'nearest', 'up'] as const) {
              const row = { id: 'r', measure: 'height', points: 3, per: step / 1e6, rounding };
              expect(pointsLines([row], values).sum).toBe(3 * added(counts));
            }
          }
        }),
        { seed: 4151, numRuns: Math.ceil(runs / 10) },
      );
    },
  );

  it.each(Object.entries(STEPS))('[K2] one step of %s more is strictly better', (_, step) => {
    const readings = Array.from({ length: 1021 }, () => step / 1e6);
    const found = places([entry('less', added(readings)), entry('more', added([...readings, step / 1e6]))], {
      ...KEY,
      roundTo: step / 1e6,
    });
    expect([found.get('more'), found.get('less')]).toEqual([1, 2]);
  });

  it('[K4] a lower value never drops a place where less is better (seed 4152)', () => {
    const values = fc.array(fc.integer({ min: 0, max: 60 }), { minLength: 1, maxLength: 9 });
    fc.assert(
      fc.property(values, fc.integer({ min: 0, max: 40 }), fc.constantFrom(0, 1, 3.175), (tenths, gain, roundTo) => {
        const key: RankingKey = { ...KEY, better: 'less', roundTo };
        const placeWith = (first: number) =>
          places(
            tenths.map((each, k) => entry(`g${k}`, (k === 0 ? first : each) * 0.1)),
            key,
          ).get('g0') ?? 0;
        const [mine = 0] = tenths;
        expect(placeWith(mine - gain)).toBeLessThanOrEqual(placeWith(mine));
      }),
      { seed: 4152, numRuns: runs },
    );
  });

  it('[K3] a better tie-break never drops a place (seed 4153)', () => {
    const build = fc.tuple(fc.constantFrom(0.3, 0.1 + 0.2, 0.7), fc.integer({ min: 3, max: 9 }));
    fc.assert(
      fc.property(fc.array(build, { minLength: 1, maxLength: 9 }), fc.integer({ min: 0, max: 3 }), (builds, fewer) => {
        const placeWith = (less: number) => {
          const entries = builds.map(([height, pieces], k): Entry => {
            const values = new Map([fact('height', height), fact('pieces', k === 0 ? pieces - less : pieces)]);
            return { group: `g${k}`, values, out: [] };
          });
          const rule = { first: KEY, tieBreaks: [{ by: 'pieces', better: 'less', roundTo: 0 } as const] };
          return rank(entries, rule).find(({ group }) => group === 'g0')?.place ?? 0;
        };
        expect(placeWith(fewer)).toBeLessThanOrEqual(placeWith(0));
      }),
      { seed: 4153, numRuns: runs },
    );
  });
});
