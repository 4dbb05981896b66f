// The closed forms of plan-figures.ts against values worked out elsewhere with quadrature (hulls of two circles).

import { describe, expect, test } from 'vitest';
import { expectNear } from '../tools/within.ts';
import { beltArea, ellipsePerimeter, squashedBeltArea, squashedBeltPerimeter } from './plan-figures.ts';

describe('belts round two circles', () => {
  test.each([
    [1, 1, 1, 8.28318530717959, 5.14159265358979],
    [5, 5, 6, 43.4159265358979, 138.539816339745],
    [4, 3, 5, 32.1918233878419, 74.9722700143692],
    [3, 1, 10, 32.9677202397859, 56.5106625188025],
  ])('radii %d and %d, centres %d apart', (R, r, d, perimeter, area) => {
    expectNear(beltArea(R, r, d), area, { relative: 1e-13 });
    expectNear(squashedBeltPerimeter(R, r, d, 1), perimeter, { relative: 5e-9 });
  });
});

test('an ellipse 3 by 5 (from memory: Ramanujan, off by less than 1e-6 of itself here)', () => {
  const [a, b] = [5, 3];
  const near = Math.PI * (3 * (a + b) - Math.sqrt((3 * a + b) * (a + 3 * b)));
  expectNear(ellipsePerimeter(a, b), near, { relative: 1e-5 });
  expectNear(ellipsePerimeter(7, 7), 14 * Math.PI, { relative: 1e-13 });
});

test('a belt round two equal ellipses is one ellipse drawn out', () => {
  expectNear(squashedBeltArea(5, 5, 8, 0.6), Math.PI * 5 * 3 + 2 * 5 * 8, { relative: 1e-13 });
  expectNear(squashedBeltPerimeter(5, 5, 8, 0.6), ellipsePerimeter(5, 3) + 16, { relative: 5e-9 });
  expect(squashedBeltPerimeter(5, 3, 1, 0.6)).toBe(ellipsePerimeter(5, 3));
});
