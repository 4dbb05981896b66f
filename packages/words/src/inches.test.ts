import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inchesUp, inchReading, SIXTEENTH_MM } from './inches.ts';

describe('inches', () => {
  it('knows a sixteenth exactly', () => {
    expect(SIXTEENTH_MM).toBe(1.5875);
  });

  it('reads the nearest sixteenth as a reduced fraction', () => {
    expect(inchReading(7.375 * 25.4, SIXTEENTH_MM)).toBe('7 3/8');
    expect(inchReading(187, SIXTEENTH_MM)).toBe('7 3/8'); // 7.362 in: 117.8 sixteenths
    expect(inchReading(25.4, SIXTEENTH_MM)).toBe('1');
    expect(inchReading(9.525, SIXTEENTH_MM)).toBe('3/8');
    expect(inchReading(0, SIXTEENTH_MM)).toBe('0');
    expect(inchReading(-12.7, SIXTEENTH_MM)).toBe('−1/2');
  });

  it('takes a half division away from zero', () => {
    expect(inchReading(25.4 / 32, SIXTEENTH_MM)).toBe('1/16');
    expect(inchReading(-25.4 / 32, SIXTEENTH_MM)).toBe('−1/16');
    expect(inchReading((3 * 25.4) / 32, SIXTEENTH_MM)).toBe('1/8');
    expect(inchReading(12.7, 25.4)).toBe('1');
    expect(inchReading(12.69, 25.4)).toBe('0');
  });

  it('reads coarser rulers in their own divisions', () => {
    expect(inchReading(187, 25.4 / 2)).toBe('7 1/2');
    expect(inchReading(187, 25.4 / 4)).toBe('7 1/4');
    expect(inchReading(187, 25.4)).toBe('7');
  });

  it('shows a tolerance no smaller than it is', () => {
    expect(inchesUp(3)).toBe('1/8'); // 1.89 sixteenths
    expect(inchesUp(SIXTEENTH_MM)).toBe('1/16');
    expect(inchesUp(0.1)).toBe('1/16');
    expect(inchesUp(26)).toBe('1 1/16');
  });

  it('reads back within half a division (seed 5302)', () => {
    const steps = [1, 2, 4, 8, 16].map((sixteenths) => sixteenths * SIXTEENTH_MM);
    fc.assert(
      fc.property(fc.double({ min: 0, max: 5000, noNaN: true }), fc.constantFrom(...steps), (valueMm, stepMm) => {
        const backMm = valueOf(inchReading(valueMm, stepMm)) * 25.4;
        // 1e-8 of a division: the slack at a half.
        return Math.abs(backMm - valueMm) <= stepMm * (0.5 + 1e-8);
      }),
      { seed: 5302 },
    );
  });
});

/** "7 3/8" as 7.375. */
function valueOf(text: string): number {
  return text
    .split(' ')
    .map((part) => part.split('/').map(Number))
    .reduce((sum, [above = 0, under = 1]) => sum + above / under, 0);
}
