// A piece lighter than any scale tells is refused: under a heavy build it would be lost in rounding.

import { describe, expect, it } from 'vitest';
import file from '../../../tests/corpus/kept/attempt-v3.json' with { type: 'json' };
import { decode } from './decode.ts';

const weighing = (massG: number): string => {
  const [first, ...others] = file.layout.pieces;
  return JSON.stringify({ ...file, layout: { ...file.layout, pieces: [{ ...first, weighed: { massG } }, ...others] } });
};

describe('the mass of a weighed piece', () => {
  it.each([0.01, 23.5, 100_000])('may be %s g', (massG) => {
    expect(decode(weighing(massG)).ok).toBe(true);
  });
  it.each([0, 0.009, -5, 100_001])('may not be %s g', (massG) => {
    const decoded = decode(weighing(massG));
    expect(decoded.ok ? [] : decoded.issues.map(({ path }) => path.join('/'))).toEqual([
      'layout/pieces/0/weighed/massG',
    ]);
  });
});
