import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { freshSeed, share } from '../../../../../../tests/tools/share.ts';
import { decimalsOf, plotScale } from './plot-scale.ts';

const CM = { inches: false, finest: 0.1, leastStep: 1 };
const inch = (parts: number) => ({ inches: true, finest: 1 / parts, leastStep: 1 });

describe('the ruler below the dots', () => {
  it('in cm: whole numbers, a longer line at the half, shorter ones at the millimetres', () => {
    const { from, to, numbers, divisions } = plotScale([32, 34.7, 34.9, 37.9], CM, 600);
    expect([from, to]).toEqual([32, 38]);
    expect(numbers).toEqual([32, 33, 34, 35, 36, 37, 38]);
    expect(divisions).toHaveLength(61);
    expect(divisions.slice(0, 6).map(({ size }) => size)).toEqual([1, 0.45, 0.45, 0.45, 0.45, 0.7]);
  });

  it.each([
    [2, [1, 0.78, 1]],
    [4, [1, 0.6, 0.78, 0.6, 1]],
    [8, [1, 0.45, 0.6, 0.45, 0.78, 0.45, 0.6, 0.45, 1]],
  ])('in inches with %d parts: every halving has a shorter line', (parts, sizes) => {
    const { divisions, numbers } = plotScale([7.5, 9.25], inch(parts), 600);
    expect(numbers).toEqual([7, 8, 9, 10]);
    expect(divisions.slice(0, parts + 1).map(({ size }) => size)).toEqual(sizes);
  });

  it('no division is finer than the ruler, and none is so close that it cannot be seen', () => {
    expect(plotScale([20, 44], { ...CM, finest: 0.5 }, 600).divisions).toHaveLength(49);
    expect(plotScale([20, 44], { ...CM, finest: 1 }, 600).divisions).toHaveLength(25);
    expect(plotScale([20, 44], CM, 300).divisions.length).toBeLessThan(60);
  });

  it('one value alone has a scale too, and no value has one', () => {
    expect(plotScale([34.9], CM, 600)).toMatchObject({ from: 34, to: 35 });
    expect(plotScale([35], CM, 600)).toMatchObject({ from: 35, to: 36 });
    expect(plotScale([], CM, 600).numbers.length).toBeGreaterThan(1);
  });

  const seed = freshSeed('plot-scale');
  it(`every value stands on it, the numbers have room, and each number is a division (seed ${seed})`, () => {
    const of = fc.constantFrom(CM, inch(2), inch(8), { inches: false, finest: 0, leastStep: 0 });
    const values = fc.array(
      fc.integer({ min: -900, max: 3000 }).map((k) => k / 8),
      { minLength: 1, maxLength: 12 },
    );
    fc.assert(
      fc.property(values, of, fc.integer({ min: 230, max: 1500 }), (all, scaleOf, width) => {
        const { from, to, numbers, divisions } = plotScale(all, scaleOf, width);
        // A whole number of steps of a tenth is off by a rounding: -0.125 stood on a scale from -0.12499999999999999.
        expect(from).toBeLessThanOrEqual(Math.min(...all) + 1e-9);
        expect(to).toBeGreaterThanOrEqual(Math.max(...all) - 1e-9);
        // The least room that two numbers need is the constant of the source, 46 px; two of them are always there.
        if (numbers.length > 2) expect(width / (numbers.length - 1)).toBeGreaterThanOrEqual(46);
        const long = divisions.filter(({ size }) => size === 1);
        expect(long).toHaveLength(numbers.length);
        for (const [k, { at }] of long.entries()) expect(Math.abs(at - (numbers[k] ?? 0))).toBeLessThan(1e-9 * 400);
      }),
      { seed, numRuns: share(2000, 200) },
    );
  });
});

it.each([
  ['halves', [0, 0.5, 1, 1.5], 1],
  ['whole numbers', [30, 32, 34], 0],
  ['quarters, and what doubles leave of a tenth', [0.25, 0.1 + 0.2], 2],
])('numbers of one axis have the same decimals: %s', (_, numbers, decimals) => {
  expect(decimalsOf(numbers)).toBe(decimals);
});
