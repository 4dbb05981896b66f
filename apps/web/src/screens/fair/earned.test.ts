import { describe, expect, it } from 'vitest';
import { decimalsOf } from './earned.ts';

// Points for 100 cm2 of the demo kit: cube 5 / 150 cm2, cuboid 3 / 158 cm2. By hand: 3.33 and 1.899.
describe('every value of a column has the same number of decimals', () => {
  it.each([
    ['quotients: 1.9 is shown as 1.90 beside 3.33', [500 / 150, 300 / 158], 2],
    ['half points: 4 is shown as 4.0 beside 4.5', [4, 4.5], 1],
    ['whole points, and what is not known', [26, 5, null], 0],
    ['what only looks broken: rounded, it is whole', [3.0000001, 7], 0],
    ['points below 0', [-1.25, 3], 2],
  ])('%s', (_, values, decimals) => {
    expect(decimalsOf(values)).toBe(decimals);
  });
});
