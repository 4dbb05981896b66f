import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { share } from '../../../../tests/tools/share.ts';
import type { DayRule, DayStanding, Standing } from '../types.ts';
import { day as dayOf } from './day.ts';

const SUM: DayRule = { kind: 'sum-of-points', placePoints: [], weights: {}, meanOfThosePresent: false };
const PLACE_POINTS: DayRule = { ...SUM, kind: 'sum-of-place-points', placePoints: [7, 5, 3] };
const MEAN: DayRule = { ...SUM, kind: 'mean-place' };

/** Standings from places alone; null is out. */
function standings(places: Readonly<Record<string, number | null>>): Standing[] {
  return Object.entries(places).map(([group, place]) => ({
    group,
    place,
    decidedBy: [],
    sharedWith: [],
    withinErrorOf: [],
    out: place === null ? [{ code: 'fell' }] : [],
  }));
}

const TWO = new Map([
  ['tall', standings({ puffins: 1, terns: 2, gannets: 2, eiders: null })],
  ['narrow', standings({ puffins: 4, terns: 2, gannets: 1, eiders: 3 })],
]);
const TOTALS = new Map([
  [
    'tall',
    new Map([
      ['puffins', 70.1],
      ['terns', 35],
      ['gannets', 35],
      ['eiders', 500],
    ]),
  ],
  [
    'narrow',
    new Map([
      ['puffins', 3],
      ['terns', 35.2],
      ['gannets', 40],
      ['eiders', 7],
    ]),
  ],
]);

const day = (
  standingsByChallenge: Parameters<typeof dayOf>[0],
  totals: Parameters<typeof dayOf>[1],
  rule: DayRule,
  ...notPlayed: readonly string[]
) => dayOf(standingsByChallenge, totals, rule, new Set(notPlayed));

const summary = (day: readonly DayStanding[]) => day.map(({ group, place, total }) => [group, place, total]);

describe('the day', () => {
  it('[D1] adds up points, more is better', () => {
    const sheet = day(TWO, TOTALS, SUM);
    expect(summary(sheet)).toEqual([
      ['gannets', 1, 75],
      ['puffins', 2, 73.1],
      ['terns', 3, 70.2],
      ['eiders', null, null],
    ]);
    expect(sheet[1]?.results).toEqual([
      { challenge: 'tall', counts: 70.1 },
      { challenge: 'narrow', counts: 3 },
    ]);
  });

  it('[D2] adds up place points, full points for a shared place, 0 beyond the list', () => {
    expect(summary(day(TWO, TOTALS, PLACE_POINTS))).toEqual([
      ['gannets', 1, 12],
      ['terns', 2, 10],
      ['puffins', 3, 7],
      ['eiders', null, null],
    ]);
  });

  it('[D3] takes the mean of the places, less is better', () => {
    expect(summary(day(TWO, TOTALS, MEAN))).toEqual([
      ['gannets', 1, 1.5],
      ['terns', 2, 2],
      ['puffins', 3, 2.5],
      ['eiders', null, null],
    ]);
  });

  it('[D4] weighs the challenges', () => {
    // Puffins 3 x 70.1 + 0.5 x 3, terns 105 + 17.6, gannets 105 + 20.
    const weights = { tall: 3, narrow: 0.5 };
    expect(summary(day(TWO, TOTALS, { ...SUM, weights })).slice(0, 3)).toEqual([
      ['puffins', 1, 211.8],
      ['gannets', 2, 125],
      ['terns', 3, 122.6],
    ]);
    // Puffins (3 x 1 + 0.5 x 4) / 3.5 = 1.428571, gannets (6 + 0.5) / 3.5 = 1.857143, terns 2.
    expect(summary(day(TWO, TOTALS, { ...MEAN, weights })).slice(0, 3)).toEqual([
      ['puffins', 1, 1.428571],
      ['gannets', 2, 1.857143],
      ['terns', 3, 2],
    ]);
  });

  it('[D4] leaves out a challenge of weight 0, its missing results too', () => {
    const sheet = day(TWO, TOTALS, { ...SUM, weights: { tall: 0 } });
    expect(summary(sheet)).toEqual([
      ['gannets', 1, 40],
      ['terns', 2, 35.2],
      ['eiders', 3, 7],
      ['puffins', 4, 3],
    ]);
    expect(sheet[0]).toMatchObject({ present: 1, of: 1 });
  });

  it('[D4] refuses a negative weight', () => {
    expect(() => day(TWO, TOTALS, { ...SUM, weights: { tall: -1 } })).toThrow(RangeError);
  });

  it('[D5] a build without a place brings nothing, and the day says how many of how many', () => {
    const eiders = day(TWO, TOTALS, SUM).find(({ group }) => group === 'eiders');
    expect(eiders).toMatchObject({ present: 1, of: 2, place: null, total: null, sharedWith: [] });
    expect(eiders?.results).toEqual([
      { challenge: 'tall', counts: null },
      { challenge: 'narrow', counts: 7 },
    ]);
  });

  it('[D5] a group that one challenge does not know is missing there', () => {
    const late = new Map([
      ['tall', standings({ terns: 1 })],
      ['narrow', standings({ terns: 1, late: 2 })],
    ]);
    expect(day(late, TOTALS, MEAN).map(({ group, place, present, of }) => [group, place, present, of])).toEqual([
      ['terns', 1, 2, 2],
      ['late', null, 1, 2],
    ]);
  });

  it('[D5] points that nobody handed in are missing', () => {
    expect(day(TWO, new Map(), SUM).map(({ present }) => present)).toEqual([0, 0, 0, 0]);
  });

  it('[D6] the mean of those present stands in, if the teacher says so', () => {
    const lenient = { meanOfThosePresent: true };
    // Eiders have 7 of one challenge, as if 14 of two; place points 3 as if 6; place 3.
    expect(summary(day(TWO, TOTALS, { ...SUM, ...lenient })).at(-1)).toEqual(['eiders', 4, 14]);
    expect(summary(day(TWO, TOTALS, { ...PLACE_POINTS, ...lenient })).at(-1)).toEqual(['eiders', 4, 6]);
    expect(summary(day(TWO, TOTALS, { ...MEAN, ...lenient })).at(-1)).toEqual(['eiders', 4, 3]);
    // With weight 2 for the missing one and 3 for the present: 7 x 5.
    const weights = { tall: 2, narrow: 3 };
    expect(summary(day(TWO, TOTALS, { ...SUM, ...lenient, weights })).at(-1)).toEqual(['eiders', 4, 35]);
  });

  it('[D6] with no result at all there is no place', () => {
    const nobody = new Map([['tall', standings({ terns: 1, petrels: null })]]);
    expect(summary(day(nobody, TOTALS, { ...MEAN, meanOfThosePresent: true }))).toEqual([
      ['terns', 1, 1],
      ['petrels', null, null],
    ]);
    expect(day(new Map(), TOTALS, MEAN)).toEqual([]);
  });

  it('[D10] a challenge that nobody has tried yet does not count and leaves nobody without a place', () => {
    const none = standings({ puffins: null, terns: null, gannets: null, eiders: null });
    const later = new Map([...TWO, ['wall', none]]);
    for (const rule of [SUM, PLACE_POINTS, MEAN, { ...MEAN, weights: { wall: 3 } }]) {
      expect(day(later, TOTALS, rule, 'wall')).toEqual(day(TWO, TOTALS, rule));
    }
    expect(day(later, TOTALS, SUM, 'wall')[0]).toMatchObject({ group: 'gannets', place: 1, present: 2, of: 2 });
    // Once a single group has tried, the others miss a result.
    const begun = day(later, TOTALS, SUM).find(({ group }) => group === 'gannets');
    expect(begun).toMatchObject({ place: null, present: 2, of: 3 });
    // Before the first attempt of all there is no place, and every group is there.
    expect(summary(day(new Map([['wall', none]]), TOTALS, SUM, 'wall'))).toEqual([
      ['eiders', null, null],
      ['gannets', null, null],
      ['puffins', null, null],
      ['terns', null, null],
    ]);
  });

  it('[D7] equal totals share a place; 0.1 + 0.2 is 0.3', () => {
    const three = new Map(['x', 'y', 'z'].map((id) => [id, standings({ terns: 1, eiders: 2, puffins: 3 })]));
    const points = (eiders: number, terns: number) =>
      new Map([
        ['terns', terns],
        ['eiders', eiders],
        ['puffins', 0],
      ]);
    const totals = new Map([
      ['x', points(0.1, 0.3)],
      ['y', points(0.2, 0)],
      ['z', points(0, 0)],
    ]);
    const sheet = day(three, totals, SUM);
    expect(summary(sheet)).toEqual([
      ['eiders', 1, 0.3],
      ['terns', 1, 0.3],
      ['puffins', 3, 0],
    ]);
    expect(sheet[0]?.sharedWith).toEqual(['terns']);
  });

  it('[D7] the order of challenges and groups decides nothing (seed 4141)', () => {
    const places = fc.array(fc.array(fc.option(fc.integer({ min: 1, max: 5 })), { minLength: 4, maxLength: 4 }), {
      minLength: 1,
      maxLength: 4,
    });
    fc.assert(
      fc.property(places, fc.constantFrom(PLACE_POINTS, MEAN), fc.boolean(), (table, kind, meanOfThosePresent) => {
        const rule = { ...kind, meanOfThosePresent, weights: { c1: 3, c2: 0.5 } };
        const challenges = table.map((row, k): [string, Standing[]] => [
          `c${k}`,
          standings(Object.fromEntries(row.map((place, g) => [`g${g}`, place]))),
        ]);
        const backwards = challenges.map(([id, all]): [string, Standing[]] => [id, [...all].reverse()]).reverse();
        const [one, other] = [day(new Map(challenges), new Map(), rule), day(new Map(backwards), new Map(), rule)];
        expect(summary(other)).toEqual(summary(one));
      }),
      { seed: 4141, numRuns: share(5_000, 300) },
    );
  });
});
