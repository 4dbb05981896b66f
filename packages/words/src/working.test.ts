import type { Expr, Quantity, Ruler, Step, Working } from '@cairnmark/geometry';
import { describe, expect, it } from 'vitest';
import { english } from './en/index.ts';
import { spanish } from './es/index.ts';
import { BANDS } from './in-class.ts';
import type { Voice } from './voice.ts';
import { stepLines, workingLines } from './working.ts';

const MM: Ruler = { id: 'mm', unit: 'mm', stepMm: 1 };
const INCH: Ruler = { id: 'sixteenth-inch', unit: 'in', stepMm: 25.4 / 16 };
const kinds: Readonly<Record<string, string>> = { 'cube-5': 'large cube', 'pyramid-5': 'tall pyramid' };

const voice = (ruler: Ruler, words = english): Voice => ({
  words,
  reader: {
    ruler,
    bands: BANDS,
    unitOf: () => 'mm3',
    kindName: (kind) => kinds[kind] ?? kind,
    criterionName: (id) => id,
    groupName: (id) => id,
  },
});

const sym = (name: string): Expr => ({ op: 'symbol', name });
const product = (...terms: Expr[]): Expr => ({ op: 'product', terms });
const third: Expr = { op: 'fraction', over: { op: 'number', value: 1 }, under: { op: 'number', value: 3 } };
const mm = (value: number): Quantity => ({ value, unit: 'mm' });

const BASE: Step = {
  symbol: 'B',
  formula: { op: 'power', base: sym('a'), exponent: 2 },
  inputs: { a: mm(50) },
  result: { value: 2500, unit: 'mm2' },
};
const PYRAMID: Step = {
  symbol: 'V',
  formula: product(third, sym('B'), sym('h')),
  inputs: { B: { value: 2500, unit: 'mm2' }, h: mm(70) },
  result: { value: 175_000 / 3, unit: 'mm3' },
};
const CUBE: Step = {
  symbol: 'V',
  formula: { op: 'power', base: sym('a'), exponent: 3 },
  inputs: { a: mm(50) },
  result: { value: 125_000, unit: 'mm3' },
};

describe('the steps of a working', () => {
  it('show symbols, numbers put in, and the result', () => {
    expect(stepLines([BASE, PYRAMID], voice(MM))).toEqual([
      'B = a² = (5.0 cm)² = 25.0 cm²',
      'V = 1/3 × B × h = 1/3 × 25.0 cm² × 7.0 cm = 58.3 cm³',
    ]);
  });

  it('have a decimal comma in Spanish', () => {
    expect(stepLines([PYRAMID], voice(MM, spanish))).toEqual(['V = 1/3 × B × h = 1/3 × 25,0 cm² × 7,0 cm = 58,3 cm³']);
  });

  it('are in inches for a ruler in inches', () => {
    const cube: Step = {
      ...CUBE,
      inputs: { a: mm(2.375 * 25.4) },
      result: { value: (2.375 * 25.4) ** 3, unit: 'mm3' },
    };
    expect(stepLines([cube], voice(INCH))).toEqual(['V = a³ = (2.375 in)³ = 13.40 in³']);
  });

  it('keep one digit more in a number that is calculated with further', () => {
    const slant: Step = {
      symbol: 's',
      formula: {
        op: 'root',
        of: {
          op: 'sum',
          terms: [
            { op: 'power', base: sym('h'), exponent: 2 },
            { op: 'power', base: sym('r'), exponent: 2 },
          ],
        },
      },
      inputs: { h: mm(60), r: mm(20) },
      result: mm(Math.hypot(60, 20)),
    };
    const lateral: Step = {
      symbol: 'L',
      formula: product({ op: 'pi' }, sym('r'), sym('s')),
      inputs: { r: mm(20), s: mm(Math.hypot(60, 20)) },
      result: { value: Math.PI * 20 * Math.hypot(60, 20), unit: 'mm2' },
    };
    expect(stepLines([slant, lateral], voice(MM))).toEqual([
      's = √(h² + r²) = √((6.0 cm)² + (2.0 cm)²) = 6.325 cm',
      'L = π × r × s = π × 2.0 cm × 6.325 cm = 39.7 cm²',
    ]);
  });

  it('write the sides of a polygon as a count and an angle in degrees', () => {
    const apothem: Step = {
      symbol: 't',
      formula: { op: 'tan', of: sym('w') },
      inputs: { w: { value: Math.PI / 5, unit: 'rad' } },
      result: { value: Math.tan(Math.PI / 5), unit: 'count' },
    };
    expect(stepLines([apothem], voice(MM))).toEqual(['t = tan(w) = tan(36°) = 0.7265']);
  });
});

describe('a sum over the pieces', () => {
  const total: Step = {
    symbol: 'V',
    formula: { op: 'sum', terms: [product(sym('n1'), sym('V1')), product(sym('n2'), sym('V2'))] },
    inputs: {
      n1: { value: 2, unit: 'count' },
      V1: { value: 125_000, unit: 'mm3' },
      n2: { value: 1, unit: 'count' },
      V2: { value: 175_000 / 3, unit: 'mm3' },
    },
    result: { value: 250_000 + 175_000 / 3, unit: 'mm3' },
  };
  const working: Working = {
    method: 'sum-of-pieces',
    steps: [total],
    parts: [
      { kind: 'cube-5', times: 2, each: 125_000, unit: 'mm3', steps: [CUBE] },
      { kind: 'pyramid-5', times: 1, each: 175_000 / 3, unit: 'mm3', steps: [] },
    ],
  };

  it('names every kind, then adds up', () => {
    expect(workingLines(working, voice(MM))).toEqual([
      'large cube: V = a³ = (5.0 cm)³ = 125 cm³',
      'large cube: 2 × 125 cm³ = 250 cm³',
      'tall pyramid: 58.3 cm³',
      'V = n₁ × V₁ + n₂ × V₂ = 2 × 125 cm³ + 1 × 58.33 cm³ = 308.3 cm³',
    ]);
  });
});

describe('a quotient', () => {
  it('keeps the digits that a small number needs, and a ratio of lengths has no unit', () => {
    const over = (above: string, under: string): Expr => ({ op: 'fraction', over: sym(above), under: sym(under) });
    const perPaper: Step = {
      symbol: 'k',
      formula: over('V', 'S'),
      inputs: { V: { value: 600_740, unit: 'mm3' }, S: { value: 74_535, unit: 'mm2' } },
      result: { value: 600_740 / 74_535, unit: 'mm' },
    };
    const slender: Step = {
      symbol: 'k',
      formula: over('h', 'w'),
      inputs: { h: mm(380), w: mm(43.3) },
      result: { value: 380 / 43.3, unit: 'ratio' },
    };
    const lines = (step: Step) => workingLines({ method: 'ratio', steps: [step], parts: [] }, voice(MM));
    // 600.74 / 745.35 = 0.80598...; 38 / 4.33 = 8.77598...
    expect(lines(perPaper)).toEqual(['k = V / S = 600.74 cm³ / 745.35 cm² = 0.806 cm']);
    expect(lines(slender)).toEqual(['k = h / w = 38.0 cm / 4.33 cm = 8.78']);
  });
});
