// The error of a difference where two builds share readings: same sizes of the kit, read once for the whole class.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { share } from '../../../../tests/tools/share.ts';
import { pointsErrors } from '../points/errors.ts';
import { pointsLines } from '../points/lines.ts';
import type { PointsRow, ScoringFact } from '../types.ts';
import type { Reading } from './near.ts';
import { withinError } from './near.ts';
import { rank } from './rank.ts';

type Errors = Readonly<Record<string, number>>;

const reading = (group: string, value: number, tolerance: number, errors: Errors = {}): Reading => ({
  group,
  value,
  tolerance,
  errors,
});

function areNear(a: Reading, b: Reading): boolean {
  const near = withinError([a, b]);
  expect(near.get(a.group)?.includes(b.group)).toBe(near.get(b.group)?.includes(a.group));
  return near.get(a.group)?.includes(b.group) ?? false;
}

describe('shared readings', () => {
  it('[K6] two towers of the same pieces differ exactly, however small the difference', () => {
    // 1.2 and 0.9 make 1.5.
    const sizes = { 'cube/edge': 1.2, 'drum/height': 0.9 };
    expect(areNear(reading('a', 350, 1.5, sizes), reading('b', 349.9, 1.5, sizes))).toBe(false);
    expect(areNear(reading('a', 350, 1.5), reading('b', 349.9, 1.5))).toBe(true);
  });

  it('[K6] nor does the fixing to a millionth leave an error: three parts whose root is no decimal', () => {
    // Root of 0.14 is 0.3741657...; fixed it is a hair more than its parts. Equal heights, parted by a tie-break.
    const sizes = { 'cube/edge': 0.1, 'drum/height': 0.2, 'cone/height': 0.3 };
    const fact = (id: string, value: number): ScoringFact => ({
      id,
      value,
      unit: 'mm',
      tolerance: id === 'height' ? Math.hypot(0.1, 0.2, 0.3) : 0,
      errors: id === 'height' ? sizes : {},
    });
    const entries = [5, 7].map((pieces, k) => ({
      group: `g${k}`,
      values: new Map([fact('height', 350), fact('pieces', pieces)].map((one) => [one.id, one])),
      out: [],
    }));
    const standings = rank(entries, {
      first: { by: 'height', better: 'more', roundTo: 0 },
      tieBreaks: [{ by: 'pieces', better: 'less', roundTo: 0 }],
    });
    expect(standings.map(({ place, withinErrorOf }) => [place, withinErrorOf])).toEqual([
      [1, []],
      [2, []],
    ]);
  });

  it('[K6] only what they hold more of a piece errs: 3 cubes against 2', () => {
    const two = reading('two', 100, 2, { 'cube/edge': 2 });
    expect(areNear(reading('three', 101, 3, { 'cube/edge': 3 }), two)).toBe(true);
    expect(areNear(reading('three', 101.000001, 3, { 'cube/edge': 3 }), two)).toBe(false);
  });

  it('[K6] different pieces, and sizes that each group read itself, add in quadrature: 3 and 4 make 5', () => {
    const pairs: [Errors, Errors][] = [
      [{ 'cube/edge': 3 }, { 'drum/height': 4 }],
      [{ 'cube/edge': 3 }, {}],
      [{}, {}],
    ];
    for (const [mine, theirs] of pairs) {
      expect(areNear(reading('a', 105, 3, mine), reading('b', 100, 4, theirs))).toBe(true);
      expect(areNear(reading('a', 105.000001, 3, mine), reading('b', 100, 4, theirs))).toBe(false);
    }
  });

  it('[K6] what is left of a tolerance beside its shared part is its own', () => {
    // 5 with a shared 3 leaves 4; the other is shared as a whole.
    const pair = (difference: number) =>
      areNear(reading('a', 100 + difference, 5, { 'cube/edge': 3 }), reading('b', 100, 3, { 'cube/edge': 3 }));
    expect([pair(4), pair(4.000001)]).toEqual([true, false]);
  });

  it('[K6] parts that are more than the tolerance itself leave nothing below 0', () => {
    const pair = (difference: number) =>
      areNear(reading('a', 100 + difference, 1, { 'cube/edge': 3 }), reading('b', 100, 4, { 'drum/height': 4 }));
    expect([pair(5), pair(5.000001)]).toEqual([true, false]);
  });

  it('[K6] a reading that errs in opposite ways in the two adds up: 3 and 4 make 7, over those between them', () => {
    const readings = (difference: number) => [
      reading('high', 100 + difference, 4, { 'cube/edge': -4 }),
      reading('between', 96, 0),
      reading('low', 93, 3, { 'cube/edge': 3 }),
    ];
    expect(withinError(readings(0)).get('low')).toEqual(['between', 'high']);
    expect(withinError(readings(0.000001)).get('low')).toEqual(['between']);
  });

  it('[K6] [P7] points built on the same readings cancel too', () => {
    const rows: PointsRow[] = [
      { id: 'high', measure: 'height', points: 2, per: 1, rounding: 'none' },
      { id: 'big', measure: 'volume', points: 1, per: 10, rounding: 'none' },
    ];
    const totalOf = (group: string, height: number, errors: Errors): Reading => {
      const tolerance = Math.hypot(...Object.values(errors));
      const fact = (id: string, value: number, times: number): ScoringFact => ({
        id,
        value,
        unit: 'mm',
        tolerance: tolerance * times,
        errors: Object.fromEntries(Object.entries(errors).map(([source, error]) => [source, error * times])),
      });
      const facts = new Map([fact('height', height, 1), fact('volume', 900, 37)].map((one) => [one.id, one]));
      return { group, value: pointsLines(rows, facts).sum ?? Number.NaN, ...pointsErrors(rows, [], facts) };
    };
    const sizes = { 'cube/edge': 0.7, 'drum/height': 0.3 };
    expect(areNear(totalOf('a', 70.1, sizes), totalOf('b', 70, sizes))).toBe(false);
    expect(areNear(totalOf('a', 70.1, sizes), totalOf('b', 70, { 'terns/edge': 0.7 }))).toBe(true);
  });

  it('[K6] near pairs are those that a slow look at all pairs finds (seed 4139)', () => {
    fc.assert(
      fc.property(fc.array(held, { minLength: 2, maxLength: 8 }), (all) => {
        const near = withinError(all.map(({ value, error }, k) => slowReading(`g${k}`, value, error)));
        for (const [k, mine] of all.entries()) {
          const expected = all.flatMap((other, n) => (n !== k && slowlyNear(mine, other) ? [`g${n}`] : []));
          expect([...(near.get(`g${k}`) ?? [])].sort()).toEqual(expected);
        }
      }),
      { seed: 4139, numRuns: share(20_000, 1_000) },
    );
  });
});

/** In tenths of a mm: parts by source and what is the reading's own; the whole is a whole number too. */
interface SlowError {
  readonly whole: number;
  readonly own: number;
  readonly parts: Errors;
}

const errors = fc.constantFrom<SlowError>(
  { whole: 0, own: 0, parts: {} },
  { whole: 3, own: 3, parts: {} },
  { whole: 5, own: 0, parts: { x: 3, y: 4 } },
  { whole: 5, own: 4, parts: { x: 3 } },
  { whole: 5, own: 3, parts: { y: -4 } },
  { whole: 7, own: 0, parts: { x: 2, y: 3, z: 6 } },
  { whole: 7, own: 6, parts: { x: -2, y: 3 } },
  { whole: 9, own: 0, parts: { x: -4, y: 4, z: -7 } },
  { whole: 9, own: 1, parts: { x: 8, z: -4 } },
);
/** Millionths: tenths of a mm, and a millionth off them. */
const value = fc
  .tuple(fc.integer({ min: 0, max: 25 }), fc.constantFrom(-1, 0, 0, 1))
  .map(([tenths, off]) => tenths * 100_000 + off);
const held = fc.record({ value, error: errors });

function slowReading(group: string, millionths: number, { whole, parts }: SlowError): Reading {
  const inMm = Object.fromEntries(Object.entries(parts).map(([source, tenths]) => [source, tenths / 10]));
  return reading(group, millionths / 1e6, whole / 10, inMm);
}

/** Source by source, as the rule says it; all numbers are below 2^53. */
function slowlyNear(a: { value: number; error: SlowError }, b: { value: number; error: SlowError }): boolean {
  const sources = ['x', 'y', 'z'].map((source) => (a.error.parts[source] ?? 0) - (b.error.parts[source] ?? 0));
  const errorSq = [...sources, a.error.own, b.error.own].reduce((sum, part) => sum + part ** 2, 0);
  return errorSq > 0 && (a.value - b.value) ** 2 <= errorSq * 100_000 ** 2;
}
