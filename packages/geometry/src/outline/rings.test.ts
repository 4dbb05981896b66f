// Rings cleaned, told convex or not, and cut into trapezoids: their areas add up to what the ring goes round.

import { describe, expect, it } from 'vitest';
import { diceOf, times } from '../../../../tests/reference/dice.ts';
import { exactUnion } from '../../../../tests/reference/exact-union.ts';
import { polygon, snapped } from '../../../../tests/reference/outline-shapes.ts';
import { degenerateRing, tracedRing } from '../../../../tests/reference/traced-rings.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import { signedAreaMm2 } from '../kernel/polygon.ts';
import type { Vec2 } from '../kernel/vec.ts';
import { cleanRing, counterClockwise, isConvexRing } from './clean-ring.ts';
import { trapezoidsOf } from './trapezoids.ts';

const NOISE_MM = 1e-9;
const SEED = 20260409;
const square: readonly Vec2[] = [
  [0, 0],
  [5, 0],
  [5, 5],
  [0, 5],
];

describe('cleaning', () => {
  it('leaves out doubled points and points along a side, at the seam too', () => {
    const cluttered: readonly Vec2[] = [
      [2, 0],
      [5, 0],
      [5, 0],
      [5, 2],
      [5, 3],
      [5, 5],
      [0, 5],
      [0, 1e-10],
      [1e-10, 0],
      [2, 0],
    ];
    expect(cleanRing(cluttered, NOISE_MM).length).toBe(4);
    expectNear(signedAreaMm2(cleanRing(cluttered, NOISE_MM)), 25, { absolute: 1e-8 });
  });

  it('keeps a spike, which turns back', () => {
    expect(
      cleanRing(
        [
          [0, 0],
          [9, 0],
          [5, 0],
          [5, 5],
          [0, 5],
        ],
        NOISE_MM,
      ).length,
    ).toBe(5);
  });
});

describe('convex', () => {
  it('a square, counter-clockwise', () => {
    expect(isConvexRing(square)).toBe(true);
    expect(isConvexRing([...square].reverse())).toBe(false);
    expect(isConvexRing(counterClockwise([...square].reverse()))).toBe(true);
  });

  it.each<readonly [string, readonly Vec2[]]>([
    [
      'a dart',
      [
        [0, 0],
        [4, 0],
        [1, 1],
        [0, 4],
      ],
    ],
    [
      'a bow-tie',
      [
        [0, 0],
        [4, 4],
        [4, 0],
        [0, 4],
      ],
    ],
    ['a star in one stroke', times(5, (k): Vec2 => [Math.cos((4 * Math.PI * k) / 5), Math.sin((4 * Math.PI * k) / 5)])],
    ['a square gone round twice', [...square, ...square]],
    [
      'a line',
      [
        [0, 0],
        [5, 0],
      ],
    ],
    ['nothing', []],
  ])('not %s', (_, ring) => {
    expect(isConvexRing(ring)).toBe(false);
  });
});

it(`trapezoids overlap nowhere and cover what the ring goes round (400 traced rings, seed ${SEED})`, () => {
  for (let k = 0; k < 400; k += 1) {
    const dice = diceOf(SEED + k);
    const [outline] = snapped([k % 2 === 0 ? tracedRing(dice) : degenerateRing(dice)], 2 ** -20);
    const points = outline?.kind === 'polygon' ? outline.points : [];
    const parts = trapezoidsOf(points, () => true, NOISE_MM);
    const areas = parts.map(({ ring }) => signedAreaMm2(ring));
    const expected = exactUnion([points], 2 ** -20).areaMm2;
    expectNear(
      areas.reduce((total, area) => total + area, 0),
      expected,
      { absolute: 1e-6 + 1e-9 * expected },
      `case ${k}`,
    );
    expect(Math.min(0, ...areas), `case ${k}`).toBeGreaterThanOrEqual(0);
    for (const { ring } of parts) expect(ring.length).toBeLessThanOrEqual(4);
  }
});

it('a level-sided L is cut into two boxes, whose sides keep what they know', () => {
  const corners: readonly Vec2[] = [
    [0, 0],
    [6, 0],
    [6, 3],
    [3, 3],
    [3, 6],
    [0, 6],
  ];
  const parts = trapezoidsOf(polygon(corners).points, (side) => side !== 3, NOISE_MM);
  expect(parts.map(({ ring }) => signedAreaMm2(ring)).sort()).toEqual([18, 9].sort());
  const facing = parts.map(({ ring, canFace }) => ring.map((_, i) => canFace(i)));
  expect(facing.flat().filter((can) => !can).length).toBe(1);
});
