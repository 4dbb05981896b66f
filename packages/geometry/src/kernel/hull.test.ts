import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { share } from '../../../../tests/tools/share.ts';
import { convexHull } from './hull.ts';
import type { Vec2 } from './vec.ts';

const NOISE = 1e-9;

describe('corners that are none', () => {
  const triangle: readonly Vec2[] = [
    [0, 0],
    [5, 0],
    [0, 3],
  ];

  test('inside, along a side, twice, in any order', () => {
    const clutter: readonly Vec2[] = [[1, 1], [2.5, 0], [0, 1.5], [2.5, 1.5], ...triangle, ...triangle];
    expect(convexHull(clutter, NOISE)).toEqual(triangle);
    expect(convexHull([...clutter].reverse(), NOISE)).toEqual(triangle);
  });

  test('off a side or a corner by less than the noise, on either side', () => {
    for (const d of [1e-10, -1e-10]) {
      const near: readonly Vec2[] = [
        [2.5, d],
        [d, 1.5],
        [d, d],
        [5 + d, d],
        [5, -d],
        [-d, 3],
        [d, 3 + d],
      ];
      const hull = convexHull([...triangle, ...near], NOISE);
      expect(hull.length).toBe(3);
      for (const [x, y] of triangle) {
        expect(Math.min(...hull.map((corner) => Math.hypot(corner[0] - x, corner[1] - y)))).toBeLessThanOrEqual(2e-10);
      }
    }
  });

  test('a bulge above the noise is a corner', () => {
    expect(convexHull([...triangle, [2.5, -1e-8]], NOISE).length).toBe(4);
  });
});

test('fewer than three corners: none, a point, a line', () => {
  expect(convexHull([], NOISE)).toEqual([]);
  expect(convexHull([[3, 5]], NOISE).length).toBeLessThan(3);
  const line: readonly Vec2[] = [
    [0, 0],
    [6, 10],
    [3, 5],
    [9, 15],
  ];
  expect(convexHull(line, NOISE).length).toBeLessThan(3);
});

test('whatever the points: convex, counter-clockwise, made of the points, holding all of them, seed 35711', () => {
  // Whole numbers, so that every product is exact and points on one line are common.
  const point = fc.tuple(fc.integer({ min: -9, max: 9 }), fc.integer({ min: -9, max: 9 }));
  const property = fc.property(fc.array(point, { minLength: 3, maxLength: 40 }), (points) => {
    const hull = convexHull(points, NOISE);
    fc.pre(hull.length >= 3);
    hull.forEach((a, k) => {
      const [b, c] = [hull[(k + 1) % hull.length]!, hull[(k + 2) % hull.length]!];
      expect(turn(a, b, c)).toBeGreaterThan(0);
      for (const p of points) expect(turn(a, b, p)).toBeGreaterThanOrEqual(0);
      expect(points).toContainEqual(a);
    });
  });
  fc.assert(property, { seed: 35711, numRuns: share(2000, 200) });
});

const turn = (a: Vec2, b: Vec2, c: Vec2): number => (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
