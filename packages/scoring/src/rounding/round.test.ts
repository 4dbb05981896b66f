import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { share } from '../../../../tests/tools/share.ts';
import type { Rounding } from '../types.ts';
import { fromMillionths, toMillionths } from './fixed.ts';
import { divideRounded, roundTo } from './round.ts';
import { exactSum } from './sum.ts';

const SIXTEENTH_MM = 25.4 / 16;
/** The decimal of n sixteenths: 1.5875 mm each, as a quotient of whole numbers. */
const sixteenths = (n: number): number => (n * 15_875) / 10_000;
const runs = share(20_000, 1_000);

describe('fixing to a millionth', () => {
  it('[R1] 0.1 + 0.2 is 0.3', () => {
    expect(0.1 + 0.2).not.toBe(0.3);
    expect(toMillionths(0.1 + 0.2)).toBe(300_000n);
    expect(roundTo(0.1 + 0.2, 0, 'none')).toBe(0.3);
  });

  it('[R1] decimals that a double cannot hold become the decimals that were written', () => {
    // Each product is off by one unit in the last place of the double: 28.999999999999996, 114.99999999999999, ...
    for (const [written, meant] of [
      [0.29 * 100, 29],
      [1.15 * 100, 115],
      [4.35 * 100, 435],
      [0.57 * 100, 57],
    ] as const) {
      expect(written).not.toBe(meant);
      expect(roundTo(written, 1, 'down')).toBe(meant);
    }
    for (const [written, meant] of [
      [0.55 * 100, 55],
      [0.07 * 100, 7],
      [0.14 * 100, 14],
    ] as const) {
      expect(written).not.toBe(meant);
      expect(roundTo(written, 1, 'up')).toBe(meant);
    }
  });

  it('[R1] a difference of one millionth still decides', () => {
    expect(roundTo(29.999999, 1, 'down')).toBe(29);
    expect(roundTo(29.9999995, 1, 'down')).toBe(30);
    expect(roundTo(30.000001, 1, 'up')).toBe(31);
    expect(roundTo(30.0000004, 1, 'up')).toBe(30);
  });

  it('[R1] half a millionth goes away from zero on both sides', () => {
    expect(toMillionths(0.0000005)).toBe(1n);
    expect(toMillionths(-0.0000005)).toBe(-1n);
    expect(toMillionths(-2.0000007)).toBe(-2_000_001n);
  });

  it('[R1] large volumes keep their millionths, and larger ones lose nothing of the double (seed 4111)', () => {
    expect(toMillionths(4_000_000_000.123457)).toBe(4_000_000_000_123_457n);
    expect(toMillionths(1e22)).toBe(10n ** 28n);
    const whole = fc.bigInt({ min: -(2n ** 52n), max: 2n ** 52n });
    fc.assert(
      fc.property(whole, (n) => toMillionths(fromMillionths(n)) === n),
      { seed: 4111, numRuns: runs },
    );
  });

  it('refuses what is no number', () => {
    expect(() => toMillionths(Number.NaN)).toThrow(RangeError);
    expect(() => toMillionths(Number.POSITIVE_INFINITY)).toThrow(RangeError);
  });
});

describe('rounding to a step', () => {
  it('[R2] a half goes away from zero', () => {
    expect([2.5, 3.5, 2.4, -2.5, -2.4].map((v) => roundTo(v, 1, 'nearest'))).toEqual([3, 4, 2, -3, -2]);
    // 1.005 is held as 1.00499999999999989...: a class that wrote 1.005 expects 1.01.
    expect(roundTo(1.005, 0.01, 'nearest')).toBe(1.01);
    expect(roundTo(412.5, 5, 'nearest')).toBe(415);
  });

  it('[R3] down and up stop at whole steps', () => {
    expect([37, 35, 30.000001].map((v) => roundTo(v, 5, 'down'))).toEqual([35, 35, 30]);
    expect([37, 35, 30.000001].map((v) => roundTo(v, 5, 'up'))).toEqual([40, 35, 35]);
    expect([roundTo(-7, 5, 'down'), roundTo(-7, 5, 'up')]).toEqual([-10, -5]);
  });

  it('[R4] every sixteenth of an inch up to 256 inches is whole, however the length came about', () => {
    let added = 0;
    for (let n = 0; n <= 4096; n += 1) {
      // Three ways to the same length; the running sum of 3/16 and 7/16 parts carries the noise of many additions.
      for (const lengthMm of [n * SIXTEENTH_MM, (n / 16) * 25.4, added]) {
        for (const rounding of ['down', 'nearest', 'up'] as const) {
          expect(roundTo(lengthMm, SIXTEENTH_MM, rounding)).toBe(sixteenths(n));
        }
      }
      added = added + 0.3 * SIXTEENTH_MM + 0.7 * SIXTEENTH_MM;
    }
  });

  it('[R4] half a sixteenth rounds up to the next, and one millionth less does not', () => {
    for (const n of [0, 3, 7, 35, 4095]) {
      expect(roundTo((n + 0.5) * SIXTEENTH_MM, SIXTEENTH_MM, 'nearest')).toBe(sixteenths(n + 1));
      expect(roundTo((n + 0.5) * SIXTEENTH_MM - 1e-6, SIXTEENTH_MM, 'nearest')).toBe(sixteenths(n));
    }
  });

  it('[R4] tenths of a cm added one by one are whole cm when they should be', () => {
    let lengthCm = 0;
    for (let tenths = 1; tenths <= 3000; tenths += 1) {
      lengthCm += 0.1;
      expect(roundTo(lengthCm, 1, 'down')).toBe(Math.floor(tenths / 10));
    }
  });

  it('[R5] without rounding the fixed value stays', () => {
    expect(roundTo(37.123456, 5, 'none')).toBe(37.123456);
    expect(roundTo(37.123456, 0, 'nearest')).toBe(37.123456);
  });

  it('refuses a negative step', () => {
    expect(() => roundTo(7, -5, 'down')).toThrow(RangeError);
    expect(() => divideRounded(7n, 0n, 'nearest')).toThrow(RangeError);
  });

  it('[R2] [R3] against a second method on whole millionths (seed 4112)', () => {
    const millionths = fc.integer({ min: -(10 ** 9), max: 10 ** 9 });
    const steps = fc.constantFrom(1, 3, 250_000, 500_000, 1_587_500, 3_175_000, 10_000_000, 25_400_000);
    const rounding = fc.constantFrom<Exclude<Rounding, 'none'>>('down', 'nearest', 'up');
    fc.assert(
      fc.property(millionths, steps, rounding, (n, step, how) => {
        expect(roundTo(n / 1e6, step / 1e6, how)).toBe(slowRounded(n, step, how) / 1e6);
      }),
      { seed: 4112, numRuns: runs },
    );
  });
});

describe('sums', () => {
  it('[R6] do not depend on the order of the terms (seed 4113)', () => {
    expect(exactSum([0.1, 0.2, 0.3])).toBe(0.6);
    expect(0.1 + 0.2 + 0.3).not.toBe(0.6);
    const terms = fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { maxLength: 12 });
    fc.assert(
      fc.property(terms, (values) => exactSum(values) === exactSum([...values].reverse())),
      { seed: 4113, numRuns: runs },
    );
  });
});

/** The multiple of `step` that the rounding asks for, chosen among its two neighbours; all are safe integers. */
function slowRounded(n: number, step: number, how: Exclude<Rounding, 'none'>): number {
  const below = Math.floor(n / step) * step;
  const above = below === n ? n : below + step;
  if (how === 'down') return below;
  if (how === 'up') return above;
  if (n - below === above - n) return n < 0 ? below : above;
  return n - below < above - n ? below : above;
}
