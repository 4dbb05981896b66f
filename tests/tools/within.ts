// Comparing measured numbers: the caller always says how near, and whether that is a length or a share.

import { expect } from 'vitest';

export type Nearness = { readonly absolute: number } | { readonly relative: number };

/** Fails unless `actual` lies as near to `expected` as asked; a relative nearness is a share of `expected`. */
export function expectNear(actual: number, expected: number, near: Nearness, what = 'value'): void {
  const allowed = 'absolute' in near ? near.absolute : near.relative * Math.abs(expected);
  expect(Math.abs(actual - expected), `${what}: ${actual} against ${expected}, off by`).toBeLessThanOrEqual(allowed);
}

/** The same for points, by their distance. */
export function expectPointNear(
  actual: readonly number[],
  expected: readonly number[],
  absolute: number,
  what = 'point',
): void {
  expect(actual.length, `${what}: coordinates`).toBe(expected.length);
  const distance = Math.hypot(...actual.map((value, k) => value - (expected[k] ?? Number.NaN)));
  expect(distance, `${what}: (${actual.join(', ')}) against (${expected.join(', ')}), off by`).toBeLessThanOrEqual(
    absolute,
  );
}

/** Fails unless `actual` rounds to the printed `value`; `half` is half a unit of its last digit, 0 for an exact one. */
export function expectPrinted(actual: number, [value, half]: readonly [value: number, half: number]): void {
  // A little beyond the half: inches are 25.4 mm in binary.
  expectNear(actual, value, { absolute: half + 1e-9 * value }, 'as printed');
}
