// Areas and lengths of rings against hand-worked figures; clipping against areas known by symmetry.

import { describe, expect, it } from 'vitest';
import { expectNear } from '../../../../tests/tools/within.ts';
import { clipConvex, ringLengthMm, signedAreaMm2 } from './polygon.ts';
import type { Vec2 } from './vec.ts';

const box = (x: number, y: number, w: number, d: number): readonly Vec2[] => [
  [x, y],
  [x + w, y],
  [x + w, y + d],
  [x, y + d],
];

describe('rings', () => {
  // From memory: a textbook example of the shoelace formula.
  const pentagon: readonly Vec2[] = [
    [3, 4],
    [5, 6],
    [9, 5],
    [12, 8],
    [5, 11],
  ];

  it('area by the way round', () => {
    expect(signedAreaMm2(pentagon)).toBe(30);
    expect(signedAreaMm2([...pentagon].reverse())).toBe(-30);
    expect(signedAreaMm2(pentagon.map(([x, y]): Vec2 => [x + 1e6, y - 1e6]))).toBe(30);
  });

  it('length', () => {
    expectNear(ringLengthMm(pentagon), 26.0900564326276, { relative: 1e-14 });
    expect(ringLengthMm(box(2, 3, 5, 7))).toBe(24);
  });

  it('of less than three corners', () => {
    expect([
      signedAreaMm2([]),
      signedAreaMm2([[3, 5]]),
      signedAreaMm2([
        [3, 5],
        [7, 1],
      ]),
    ]).toEqual([0, 0, 0]);
    expect([
      ringLengthMm([]),
      ringLengthMm([[3, 5]]),
      ringLengthMm([
        [0, 0],
        [3, 4],
      ]),
    ]).toEqual([0, 0, 10]);
  });
});

describe('what two convex rings have in common', () => {
  it('boxes', () => {
    expect(signedAreaMm2(clipConvex(box(0, 0, 7, 5), box(4, 3, 9, 9)))).toBe(6);
    expect(clipConvex(box(0, 0, 7, 5), box(1, 1, 3, 2))).toEqual(expect.arrayContaining([...box(1, 1, 3, 2)]));
    expect(clipConvex(box(0, 0, 7, 5), box(8, 0, 3, 5))).toEqual([]);
    expect(signedAreaMm2(clipConvex(box(0, 0, 7, 5), box(7, 0, 3, 5)))).toBe(0);
  });

  it('a square and the same turned by an eighth are a regular octagon', () => {
    const r = Math.SQRT2 * 5;
    const turned: readonly Vec2[] = [
      [r, 0],
      [0, r],
      [-r, 0],
      [0, -r],
    ];
    const octagon = clipConvex(box(-5, -5, 10, 10), turned);
    expect(octagon.length).toBe(8);
    // A regular octagon of in-radius 5: 8 x 25 x tan 22.5 degrees.
    expectNear(signedAreaMm2(octagon), 200 * Math.tan(Math.PI / 8), { relative: 1e-13 });
  });
});
