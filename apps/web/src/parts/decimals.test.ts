import { expect, it } from 'vitest';
import { decimalsOf } from './decimals.ts';

it('points have the decimals that one of them needs, three at most', () => {
  expect(decimalsOf([12, -3, 0])).toBe(0);
  expect(decimalsOf([12, 0.1 + 0.2])).toBe(1);
  expect(decimalsOf([0.25, 1.5, null])).toBe(2);
  expect(decimalsOf([98, 0.125])).toBe(3);
  expect(decimalsOf([1 / 3])).toBe(3);
  expect(decimalsOf([])).toBe(0);
});
