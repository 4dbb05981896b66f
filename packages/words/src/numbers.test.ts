import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fixed, stepsUp, trimmed, wholeSteps } from './numbers.ts';

describe('numbers as text', () => {
  it('rounds half away from zero, also where a double is a hair below the half', () => {
    expect(fixed(0.15, 1, '.')).toBe('0.2');
    expect(fixed(-0.15, 1, '.')).toBe('−0.2');
    expect(fixed(1.005, 2, '.')).toBe('1.01');
    expect(fixed(2.5, 0, '.')).toBe('3');
    expect(fixed(-2.5, 0, '.')).toBe('−3');
    expect(fixed(2.4999, 0, '.')).toBe('2');
  });

  it('never writes minus nought', () => {
    expect(fixed(-0.04, 1, '.')).toBe('0.0');
    expect(fixed(-0, 0, '.')).toBe('0');
  });

  it('writes a decimal comma where the language has one', () => {
    expect(fixed(1234.5, 2, ',')).toBe('1234,50');
    expect(fixed(0.07, 2, ',')).toBe('0,07');
  });

  it('shows as many decimals as a value has, within bounds', () => {
    expect(trimmed(7, 0, 3, '.')).toBe('7');
    expect(trimmed(7, 1, 3, '.')).toBe('7.0');
    expect(trimmed(7.25, 0, 3, '.')).toBe('7.25');
    expect(trimmed(1 / 3, 0, 3, '.')).toBe('0.333');
    expect(trimmed(0.1 + 0.2, 0, 3, '.')).toBe('0.3');
  });

  it('counts whole steps, and steps up without stumbling over the noise of doubles', () => {
    expect(wholeSteps(37.5, 5)).toBe(8);
    expect(wholeSteps(-37.5, 5)).toBe(-8);
    expect(stepsUp(0.3, 0.1)).toBe(3);
    expect(stepsUp(0.31, 0.1)).toBe(4);
    expect(stepsUp(0, 0.1)).toBe(0);
  });

  it('reads back within half a unit of the last digit (seed 5301)', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        fc.integer({ min: 0, max: 4 }),
        (value, decimals) => {
          const back = Number(fixed(value, decimals, '.').replace('−', '-'));
          // 1e-9 of a step for the slack at a half, and the noise of reading the text back.
          return Math.abs(back - value) <= 10 ** -decimals * (0.5 + 2e-9) + 1e-9;
        },
      ),
      { seed: 5301 },
    );
  });
});
