import { rulerOf } from '@cairnmark/geometry';
import { typedText } from '@cairnmark/words';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readNumber } from './length-text.ts';
import { writtenUnits } from './written-units.ts';

const cm = writtenUnits('mm', { ...rulerOf('mm'), unit: 'cm' });
const mm = writtenUnits('mm', rulerOf('mm'));
const inches = writtenUnits('mm', rulerOf('sixteenth-inch'));
const areas = writtenUnits('mm2', rulerOf('cm'));
const volumes = writtenUnits('mm3', rulerOf('inch'));
const counts = writtenUnits('count', rulerOf('cm'));

describe('a typed length', () => {
  it.each([
    ['6', 60],
    ['6.5', 65],
    ['6,5', 65],
    ['6.', 60],
    [',5', 5],
    ['  43.0 ', 430],
    ['0', 0],
    ['-2.5', -25],
    ['−2,5', -25],
    ['+3', 30],
    ['0.125', 1.25],
    ['0,125', 1.25],
    ['1234,567', 12345.67],
    ['12.25', 122.5],
    ['1.2505', 12.505],
    ['43 mm', 43],
    ['4,3cm', 43],
    ['4.3 CM', 43],
    // 7.375 x 25.4, by hand.
    ['7 3/8 in', 187.325],
    ['7 3/8"', 187.325],
    ['7⅜″', 187.325],
    ['7.25 inches', 184.15],
    ['1/2 pulgadas', 12.7],
  ])('reads %j in a field of centimetres as %d mm', (text, value) => {
    expect(readNumber(text, cm)).toEqual({ kind: 'read', value });
  });

  it.each([
    ['7 3/8', 187.325],
    ['7-3/8', 187.325],
    ['7 - 3/8', 187.325],
    ['3/8', 9.525],
    ['-3/8', -9.525],
    ['7 ¾', 196.85],
    ['7”', 177.8],
    ["7''", 177.8],
    ['1/64', 0.396875],
    ['10 cm', 100],
    ['7.5', 190.5],
  ])('reads %j in a field of inches as %d mm', (text, value) => {
    expect(readNumber(text, inches)).toEqual({ kind: 'read', value });
  });

  it('reads millimetres where the field is in millimetres', () => {
    expect(readNumber('6.5', mm)).toEqual({ kind: 'read', value: 6.5 });
    expect(readNumber('6.5 cm', mm)).toEqual({ kind: 'read', value: 65 });
  });

  it.each(['1,250', '1.250', '1.250 cm'])('asks back what %j means', (text) => {
    expect(readNumber(text, cm)).toEqual({ kind: 'either', decimal: 12.5, thousands: 12_500 });
  });

  it('asks back in the unit that is written', () => {
    expect(readNumber('-12,500 mm', cm)).toEqual({ kind: 'either', decimal: -12.5, thousands: -12_500 });
    expect(readNumber('1,250"', cm)).toEqual({ kind: 'either', decimal: 31.75, thousands: 31_750 });
  });

  it.each([
    '6..0',
    '6,,0',
    '1,250.5',
    '1.250,5',
    '1,250,000',
    '1 250',
    'six',
    '.',
    ',',
    '-',
    '6 6',
    '6-',
    '--6',
    '6e3',
    '0x10',
    '1/0 in',
    '0/8 in',
    '8/8 in',
    '73/8 in',
    '3/88 in',
    '1/3 in',
    '7 3/8 1/2 in',
    '7.5 3/8 in',
    '3/ in',
    '/8 in',
    '7 3/8',
    '7 3/8 cm',
    '6 m',
    '6 cm cm',
    'cm',
    '6 cm2',
    '1234567890123',
    '٣',
    'Infinity',
    'NaN',
  ])('does not read %j in a field of centimetres', (text) => {
    expect(readNumber(text, cm)).toEqual({ kind: 'unreadable' });
  });

  it('tells an empty field from one that it cannot read', () => {
    expect(readNumber('', cm)).toEqual({ kind: 'empty' });
    expect(readNumber(' \u00a0 ', cm)).toEqual({ kind: 'empty' });
  });

  it('takes areas, volumes, counts and angles', () => {
    expect(readNumber('37,5', areas)).toEqual({ kind: 'read', value: 3750 });
    expect(readNumber('37.5 cm2', areas)).toEqual({ kind: 'read', value: 3750 });
    expect(readNumber('1 in²', areas)).toEqual({ kind: 'read', value: 645.16 });
    expect(readNumber('2', volumes)).toEqual({ kind: 'read', value: 32_774.128 });
    expect(readNumber('2 cm³', volumes)).toEqual({ kind: 'read', value: 2000 });
    expect(readNumber('3/8', volumes)).toEqual({ kind: 'unreadable' });
    expect(readNumber('4', counts)).toEqual({ kind: 'read', value: 4 });
    expect(readNumber('4 cm', counts)).toEqual({ kind: 'unreadable' });
    expect(readNumber('180', writtenUnits('rad', rulerOf('cm')))).toEqual({ kind: 'read', value: Math.PI });
    expect(readNumber('12.5 s', writtenUnits('s', rulerOf('cm')))).toEqual({ kind: 'read', value: 12.5 });
  });
});

describe('laws of typed lengths', () => {
  const figures = fc.nat({ max: 999_999 });
  const places = fc.constantFrom(1, 2, 4, 5);

  it('stores the double nearest to what was written, comma or point (seed 6401)', () => {
    fc.assert(
      fc.property(figures, places, fc.constantFrom(',', '.'), (digits, behind, mark) => {
        const padded = String(digits).padStart(behind + 1, '0');
        const text = `${padded.slice(0, -behind)}${mark}${padded.slice(-behind)}`;
        // Exact in whole numbers, rounded once by the reader of JavaScript's own literals.
        expect(readNumber(text, cm)).toEqual({ kind: 'read', value: Number(`${digits}e${1 - behind}`) });
        const exact = Number(`${BigInt(digits) * 254n}e${-1 - behind}`);
        expect(readNumber(text, inches)).toEqual({ kind: 'read', value: exact });
      }),
      { seed: 6401 },
    );
  });

  it('asks back every number with three figures behind the mark that could be thousands (seed 6402)', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 999 }),
        fc.nat({ max: 999 }),
        fc.constantFrom(',', '.'),
        (front, back, mark) => {
          const behind = String(back).padStart(3, '0');
          const answer = readNumber(`${front}${mark}${behind}`, counts);
          expect(answer).toEqual({
            kind: 'either',
            decimal: Number(`${front}.${behind}`),
            thousands: Number(`${front}${behind}`),
          });
        },
      ),
      { seed: 6402 },
    );
  });

  it('reads the text of a stored length back as that length, to the figures shown (seed 6403)', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 160_000 }), fc.constantFrom('.', ','), (sixteenths, mark) => {
        const ruler = rulerOf('sixteenth-inch');
        const stored = (sixteenths * 25.4) / 16;
        const answer = readNumber(typedText(stored, 'mm', ruler, mark), inches);
        // A whole count of sixteenths survives but for the rounding of doubles.
        expect(answer.kind === 'read' && Math.abs(answer.value - stored) <= 1e-10 * (1 + stored)).toBe(true);
      }),
      { seed: 6403 },
    );
  });

  it('never throws and never makes up a number that is not finite (seed 6404)', () => {
    const typed = fc.oneof(
      fc.string(),
      fc.string({ unit: fc.constantFrom(...'0123456789.,/- "cmin½'), maxLength: 14 }),
    );
    fc.assert(
      fc.property(typed, (text) => {
        const answer = readNumber(text, inches);
        if (answer.kind === 'read') expect(Number.isFinite(answer.value)).toBe(true);
        if (answer.kind === 'either') expect(answer.thousands).not.toBe(answer.decimal);
        if (!/\d|[¼½¾⅛⅜⅝⅞]/.test(text.normalize('NFKD'))) expect(answer.kind).not.toBe('read');
      }),
      { seed: 6404, numRuns: 2000 },
    );
  });
});
