import type { Ruler, RulerId } from '@cairnmark/geometry';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exact, plusMinus, reading } from './quantities.ts';

const ruler = (id: RulerId, unit: Ruler['unit'], stepMm: number): Ruler => ({ id, unit, stepMm });
const MM = ruler('mm', 'mm', 1);
const HALF_CM = ruler('half-cm', 'cm', 5);
const CM = ruler('cm', 'cm', 10);
const SIXTEENTH = ruler('sixteenth-inch', 'in', 25.4 / 16);
const INCH = ruler('inch', 'in', 25.4);

describe('a reading', () => {
  it('has the divisions of the ruler', () => {
    expect(reading(253.4, 'mm', 0.6, MM, '.')).toBe('253 mm');
    expect(reading(253.4, 'mm', 0.6, HALF_CM, '.')).toBe('25.5 cm');
    expect(reading(252.4, 'mm', 0.6, HALF_CM, '.')).toBe('25.0 cm');
    expect(reading(255, 'mm', 0.6, CM, '.')).toBe('26 cm');
    expect(reading(187, 'mm', 3, SIXTEENTH, '.')).toBe('7 3/8 in');
    expect(reading(187, 'mm', 0, INCH, '.')).toBe('7 in');
  });

  it('has a decimal comma in Spanish', () => {
    expect(reading(253.4, 'mm', 0.6, HALF_CM, ',')).toBe('25,5 cm');
    expect(reading(6170, 'mm2', 58, CM, ',')).toBe('61,7 cm²');
  });

  it('shows no more digits than the tolerance justifies', () => {
    // 58 mm2 = 0.58 cm2 goes five times into a tenth; 3 cm2 three times into a whole; 12 cm2 twelve times.
    expect(reading(6174, 'mm2', 58, MM, '.')).toBe('61.7 cm²');
    expect(reading(6174, 'mm2', 300, MM, '.')).toBe('62 cm²');
    expect(reading(617_400, 'mm2', 1200, MM, '.')).toBe('6174 cm²');
    expect(reading(617_400, 'mm2', 20_000, MM, '.')).toBe('6170 cm²');
    expect(reading(58_333, 'mm3', 1430, MM, '.')).toBe('58.3 cm³');
    expect(reading(1043, 'mm', 40, MM, '.')).toBe('1040 mm');
    expect(reading(1043, 'mm', 40, CM, '.')).toBe('104 cm');
  });

  it('shows an area without error in full, with no noughts behind', () => {
    expect(reading(0, 'mm2', 1e-6, MM, '.')).toBe('0 cm²');
    expect(reading(6000, 'mm2', 0, MM, '.')).toBe('60 cm²');
  });

  it('shows areas and volumes in inches as decimals', () => {
    expect(reading(25.4 ** 2 * 3.14, 'mm2', 25.4 ** 2 * 0.05, SIXTEENTH, '.')).toBe('3.14 in²');
    expect(reading(25.4 ** 3 * 12, 'mm3', 25.4 ** 3 * 0.5, SIXTEENTH, '.')).toBe('12.0 in³');
  });

  it('coarsens inches with the tolerance', () => {
    expect(reading(187, 'mm', 25.4, SIXTEENTH, '.')).toBe('7 1/4 in');
  });
});

describe('an exact value', () => {
  it('is shown in full', () => {
    expect(exact(6000, 'mm2', CM, '.')).toBe('60 cm²');
    expect(exact(6050, 'mm2', CM, '.')).toBe('60.5 cm²');
    expect(exact(127.5, 'mm', MM, '.')).toBe('127.5 mm');
    expect(exact(127.5, 'mm', CM, ',')).toBe('12,75 cm');
    expect(exact(0.05, 'mm', CM, '.')).toBe('0.005 cm');
    expect(exact(Math.PI / 6, 'rad', CM, '.')).toBe('30°');
    expect([exact(3.4, 'ratio', CM, ','), exact(7, 's', CM, '.')]).toEqual(['3,4', '7 s']);
  });

  it('is a fraction of an inch where it is one', () => {
    expect(exact(7.375 * 25.4, 'mm', SIXTEENTH, '.')).toBe('7 3/8 in');
    expect(exact(3, 'mm', SIXTEENTH, '.')).toBe('0.118 in');
  });
});

describe('a tolerance', () => {
  it('has at most two digits and is rounded up', () => {
    expect(plusMinus(3, 'mm', CM, '.')).toBe('± 0.3 cm');
    expect(plusMinus(3, 'mm', MM, ',')).toBe('± 3 mm');
    expect(plusMinus(0.577, 'mm', MM, '.')).toBe('± 1 mm');
    expect(plusMinus(1.9, 'mm', MM, '.')).toBe('± 2 mm');
    expect(plusMinus(2.9, 'mm', HALF_CM, '.')).toBe('± 0.3 cm');
    expect(plusMinus(1, 'mm', MM, '.')).toBe('± 1 mm');
    expect(plusMinus(200, 'mm2', MM, '.')).toBe('± 2.0 cm²');
    expect(plusMinus(1410, 'mm3', MM, '.')).toBe('± 1.5 cm³');
    expect(plusMinus(31_000, 'mm3', MM, '.')).toBe('± 40 cm³');
    expect(plusMinus(3, 'mm', SIXTEENTH, '.')).toBe('± 1/8 in');
  });

  it('is silent for a value without error', () => {
    expect(plusMinus(0, 'count', CM, '.')).toBe('');
  });
});

describe('laws of readings', () => {
  const units = ['mm', 'mm2', 'mm3'] as const;

  it('reads back within half a step, and a step within a third of the tolerance or the division (seed 5303)', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1e6, noNaN: true }),
        fc.double({ min: 0.01, max: 1e4, noNaN: true }),
        fc.constantFrom(...units),
        fc.constantFrom(MM, HALF_CM, CM),
        (value, tolerance, unit, by) => {
          const back = valueOf(reading(value, unit, tolerance, by, '.'));
          const division = unit === 'mm' ? by.stepMm : 0;
          // Half a step; a step is at most a third of the tolerance, or the finest decimal that is ever shown.
          const finest = 0.001 * { mm: 10, mm2: 100, mm3: 1000 }[unit];
          const most = Math.max(division, tolerance / 3, finest) / 2;
          return Math.abs(back - value) <= most * (1 + 1e-6);
        },
      ),
      { seed: 5303 },
    );
  });

  it('never shows a tolerance smaller than it is, nor larger by a third or a millimetre (seed 5304)', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 1e4, noNaN: true }), fc.constantFrom(...units), (amount, unit) => {
        const tolerance = amount * { mm: 1, mm2: 100, mm3: 1000 }[unit];
        const shown = valueOf(plusMinus(tolerance, unit, MM, '.').slice(2));
        // One step at most is added: a third of the tolerance, or the 1 mm of the finest ruler; 1e-6 for the noise of logarithms.
        const most = Math.max(tolerance * (4 / 3), unit === 'mm' ? tolerance + 1 : 0);
        return shown >= tolerance * (1 - 1e-6) && shown <= most * (1 + 1e-6);
      }),
      { seed: 5304 },
    );
  });
});

const SIZES: Readonly<Record<string, number>> = { mm: 1, cm: 10, 'cm²': 100, 'cm³': 1000 };

/** "25.5 cm" as 255. */
function valueOf(text: string): number {
  const [number = '', unit = ''] = text.split(' ');
  return Number(number) * (SIZES[unit] ?? Number.NaN);
}
