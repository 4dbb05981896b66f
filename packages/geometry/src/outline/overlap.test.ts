// Areas common to two convex outlines: published lenses, closed forms, and the identity overlap = a + b - union.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { box, disc, moved, ngon, turn } from '../../../../tests/reference/outline-shapes.ts';
import { slabUnion } from '../../../../tests/reference/slab-union.ts';
import { share } from '../../../../tests/tools/share.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import { outlineAreaMm2 } from './area.ts';
import { overlapAreaMm2 } from './overlap.ts';

const SEED = 20260404;

describe('lenses', () => {
  // Weisstein, "Circle-Circle Intersection"; values by quadrature. 1.40306643968574 is the sample of problem CGL_7_I of the
  // Aizu Online Judge too.
  it.each([
    [1, 1, 1, 1.22836969860876],
    [1, 2, 2, 1.40306643968574],
    [5, 5, 6, 22.3647609000806],
    [3, 4, 5, 6.64167470270706],
    [2, 3, 3.5, 3.57950312424729],
    [1, 3, 10, 0],
    [1, 1, 0.807945506599034, Math.PI / 2],
    [2, 5, 1, 4 * Math.PI],
    [5, 2, 3, 4 * Math.PI],
    [3, 4, 7, 0],
  ])('radii %d and %d, centres %d apart: %d', (r, R, d, area) => {
    const nearness = area === 0 ? { absolute: 0 } : { relative: 1e-12 };
    expectNear(overlapAreaMm2(disc(7, 3, r), disc(7 - d, 3, R)), area, nearness);
    expectNear(overlapAreaMm2(disc(0, 0, R), disc(0, d, r)), area, nearness);
  });

  it('keep their digits when they are thin', () => {
    // To first order a lens of width w between equal discs has the area (4/3) w root(w r).
    const [r, w] = [50, 1e-7];
    expectNear(overlapAreaMm2(disc(0, 0, r), disc(2 * r - w, 0, r)), (4 / 3) * w * Math.sqrt(w * r), {
      relative: 1e-6,
    });
  });
});

describe('a polygon and a disc', () => {
  it.each([
    ['a quarter of a disc', box(0, 0, 5, 5), disc(0, 0, 3), (9 * Math.PI) / 4],
    ['half of it', box(-5, -7, 5, 14), disc(0, 0, 3), (9 * Math.PI) / 2],
    ['all of it', box(-5, -7, 11, 14), disc(0, 0, 3), 9 * Math.PI],
    ['all of the polygon', box(-1, -2, 2, 3), disc(0, 0, 3), 6],
    [
      'a disc that crosses a square eight times',
      box(-1, -1, 2, 2),
      disc(0, 0, 1.2),
      4 + 1.44 * Math.PI - 4.72024889802887,
    ],
    ['apart, though in line with a side', box(4, 0, 5, 5), disc(0, 0, 3), 0],
    ['tangent', box(3, -5, 5, 10), disc(0, 0, 3), 0],
  ])('%s', (_, polygon, round, area) => {
    const nearness = area === 0 ? { absolute: 1e-12 } : { relative: 1e-12 };
    for (const turnRad of [0, 0.4, 2]) {
      const [a, b] = [moved(polygon, turn(turnRad)), moved(round, turn(turnRad))];
      expectNear(overlapAreaMm2(a, b), area, nearness);
      expectNear(overlapAreaMm2(b, a), area, nearness);
    }
  });
});

it('polygons: sharing a side or a corner, one in the other, crossing', () => {
  expect(overlapAreaMm2(box(0, 0, 3, 5), box(3, 1, 7, 5))).toBe(0);
  expect(overlapAreaMm2(box(0, 0, 3, 5), box(3, 5, 7, 5))).toBe(0);
  expect(overlapAreaMm2(box(0, 0, 3, 5), box(4, 0, 7, 5))).toBe(0);
  expect(overlapAreaMm2(box(0, 0, 7, 5), box(1, 1, 3, 2))).toBe(6);
  expect(overlapAreaMm2(box(0, 0, 7, 5), box(5, 3, 9, 9))).toBe(4);
});

it(`overlap = a + b - union, by the slab integral (seed ${SEED})`, () => {
  const place = fc.double({ min: -40, max: 40, noNaN: true });
  const size = fc.double({ min: 3, max: 40, noNaN: true });
  const outline = fc
    .tuple(place, place, size, fc.integer({ min: 2, max: 9 }), fc.double({ min: 0, max: 7, noNaN: true }))
    .map(([x, y, r, n, tilt]) => (n === 2 ? disc(x, y, r) : ngon(x, y, r, n, tilt)));
  fc.assert(
    fc.property(outline, outline, (a, b) => {
      const both = outlineAreaMm2(a) + outlineAreaMm2(b);
      expectNear(overlapAreaMm2(a, b), both - slabUnion([a, b]).areaMm2, { absolute: 1e-11 * both });
    }),
    { seed: SEED, numRuns: share(5000, 300) },
  );
});
