import type { Ruler } from '@cairnmark/geometry';
import { describe, expect, it } from 'vitest';
import { english } from './en/index.ts';
import { field as enField } from './en/screens/field.ts';
import { spanish } from './es/index.ts';
import { field as esField } from './es/screens/field.ts';
import { typedText } from './typed.ts';

const CM: Ruler = { id: 'cm', unit: 'cm', stepMm: 10 };
const HALF_CM: Ruler = { id: 'half-cm', unit: 'cm', stepMm: 5 };
const MM: Ruler = { id: 'mm', unit: 'mm', stepMm: 1 };
const INCH: Ruler = { id: 'inch', unit: 'in', stepMm: 25.4 };

describe('a stored value in a field', () => {
  it('stands as the ruler reads', () => {
    expect(typedText(60, 'mm', { ...MM, unit: 'cm' }, '.')).toBe('6.0');
    expect(typedText(60, 'mm', HALF_CM, ',')).toBe('6,0');
    expect(typedText(60, 'mm', CM, '.')).toBe('6');
    expect(typedText(65, 'mm', CM, '.')).toBe('6.5');
    expect(typedText(60, 'mm', MM, '.')).toBe('60');
    // 7 3/8 in, and the same in centimetres: 18.7325.
    expect(typedText(187.325, 'mm', INCH, '.')).toBe('7 3/8');
    expect(typedText(187.325, 'mm', CM, '.')).toBe('18.733');
    expect(typedText(100, 'mm', INCH, '.')).toBe('3.937');
  });

  it('stands for areas and counts without noughts', () => {
    expect(typedText(3750, 'mm2', MM, ',')).toBe('37,5');
    expect(typedText(5, 'count', INCH, '.')).toBe('5');
    expect(typedText(645.16, 'mm2', INCH, '.')).toBe('1');
    expect(typedText(-25, 'mm', CM, '.')).toBe('−2.5');
  });

  it('has the decimal mark that the language writes everywhere else', () => {
    expect(enField['field.decimal-mark']).toBe(english.decimalMark);
    expect(esField['field.decimal-mark']).toBe(spanish.decimalMark);
  });
});
