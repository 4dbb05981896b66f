import { demoClass } from '@cairnmark/demo';
import { unitOf } from '@cairnmark/engine';
import { rulerOf, TILT_BANDS } from '@cairnmark/geometry';
import { classReader, wordsFor } from '@cairnmark/words';
import { describe, expect, it } from 'vitest';
import { tiltFigure, tiltText } from './tilt-figure.ts';

const { challenges, groups } = demoClass();
const [challenge] = challenges;
const DEGREE = Math.PI / 180;

function textOf(tiltRad: number | null, language: 'en' | 'es' = 'en'): string {
  if (challenge === undefined) throw new RangeError('the demo has challenges');
  const reader = classReader(challenge, groups, { ruler: rulerOf('mm'), bands: TILT_BANDS, unitOf });
  return tiltText({ name: 'read.tips', tiltRad, none: false }, { inClass: wordsFor(language).inClass(reader) });
}

describe('the tilt among the six numbers', () => {
  it('is not cut by what the sums leave of a margin', () => {
    expect(textOf(45 * DEGREE - 3e-7)).toBe('45°');
    expect(textOf(2.9 * DEGREE - 3e-7)).toBe('2.9°');
  });

  it('is rounded down, and written as the language writes numbers', () => {
    expect(textOf(2.99 * DEGREE)).toBe('2.9°');
    expect(textOf(2.99 * DEGREE, 'es')).toBe('2,9°');
    expect(textOf(10.9 * DEGREE)).toBe('10°');
  });

  it('is a dash where nothing is known', () => {
    expect(textOf(null)).toBe('–');
    expect(tiltFigure(null)).toEqual({ name: 'read.tips', tiltRad: null, none: false });
  });
});
