// Known builds: where each piece comes to lie and what it rests on. Lengths mm; heights to 1e-11 of about 100 mm.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  box,
  cone,
  cube,
  cylinder,
  put,
  solidsOf,
  sphere,
  stackOf,
} from '../../../../tests/reference/stacked-builds.ts';
import { expectNear, expectPointNear } from '../../../../tests/tools/within.ts';
import { supportPoint } from '../solids/body.ts';
import type { Stack, Support } from './types.ts';

const HEIGHT = { absolute: 1e-11 };

const bottoms = (stack: Stack): number[] => stack.pieces.map(({ bottomMm }) => bottomMm);
const under = (stack: Stack, upper: number): Support['lower'][] =>
  stack.supports.filter((support) => support.upper === upper).map(({ lower }) => lower);

describe('towers', () => {
  it.each([2, 10, 200])('%d boxes of 7.3 reach just that many times 7.3', (count) => {
    const tower = Array.from({ length: count }, (_, k) => put('brick', 0.3 * (k % 2), 0, { turnRad: 0.7 * k }));
    const stack = stackOf(tower, solidsOf({ brick: box(30, 50, 7.3) }));
    expectNear(stack.pieces.at(-1)?.topMm ?? 0, count * 7.3, { relative: 1e-12 });
    expect(under(stack, 0)).toEqual(['table']);
    for (let k = 1; k < count; k++) expect(under(stack, k)).toEqual([k - 1]);
    expect(stack.supports.every(({ normal, closedMm }) => normal[2] === 1 && closedMm === 0)).toBe(true);
  });

  it('a piece lies in the middle of its spot by its centre of mass, its lowest point at its bottom', () => {
    const solids = solidsOf({ cone: cone(30, 70), slab: box(200, 200, 10) });
    const stack = stackOf([put('slab', 0, 0), put('cone', 13, 17, { resting: 'side', turnRad: 2 })], solids);
    const [, laid] = stack.pieces;
    if (laid === undefined) throw new Error('no cone');
    expectNear(laid.bottomMm, 10, HEIGHT);
    expectNear(laid.topMm, 10 + laid.resting.heightMm, HEIGHT);
    expectNear(supportPoint(laid.body, [0, 0, -1])[2], 10, HEIGHT);
    // On its side a cone's axis leans by the half angle at its tip; a quarter of the height from the base lies its
    // centre of mass, so its tip is three quarters of the height, seen from above, off the spot, towards the turned -y or +y.
    const tip = laid.body.flatMap((part) => (part.kind === 'points' ? part.points : []))[0] ?? [0, 0, 0];
    const fromSpot = Math.hypot(tip[0] - 13, tip[1] - 17);
    expectNear(fromSpot, (0.75 * 70 * 70) / Math.hypot(30, 70), HEIGHT);
    expectNear(tip[2], 10, HEIGHT);
  });
});

describe('resting on several pieces', () => {
  const solids = solidsOf({
    pillar: cube(50),
    low: box(50, 50, 49.97),
    short: box(50, 50, 48.5),
    lintel: box(200, 50, 20),
  });
  const bridge = (right: string): Stack =>
    stackOf([put('pillar', -70, 0), put(right, 70, 0), put('lintel', 0, 0)], solids);

  it('a lintel on two pillars', () => {
    const stack = bridge('pillar');
    expect(bottoms(stack)).toEqual([0, 0, 50]);
    expect(under(stack, 2).sort()).toEqual([0, 1]);
  });

  it('on pillars that differ by less than a contact: both carry, and the gap closed is told', () => {
    const stack = bridge('low');
    expect(bottoms(stack)[2]).toBe(50);
    const [, , onHigh, onLow] = [...stack.supports].sort((a, b) => a.upper - b.upper || a.closedMm - b.closedMm);
    expect(onHigh).toEqual({ upper: 2, lower: 0, normal: [0, 0, 1], closedMm: 0 });
    expect(onLow).toMatchObject({ upper: 2, lower: 1, normal: [0, 0, 1] });
    expectNear(onLow?.closedMm ?? 0, 0.03, HEIGHT);
  });

  it('whichever of the two was laid first', () => {
    const pieces = [put('low', -70, 0), put('pillar', 70, 0), put('lintel', 0, 0)];
    expect(under(stackOf(pieces, solids), 2).sort()).toEqual([0, 1]);
  });

  it('on pillars that differ by more: the higher one carries', () => {
    expect(under(bridge('short'), 2)).toEqual([0]);
  });

  it('a ball that a tile lifts by less than a contact rests on the tile and on the table', () => {
    const lifted = solidsOf({ tile: box(60, 60, 30), ball: sphere(40) });
    const centre = 30 + Math.sqrt(40 ** 2 - (40.03 - 30) ** 2);
    const stack = stackOf([put('tile', 0, 0), put('ball', centre, 0, { resting: 'round' })], lifted);
    expectNear(bottoms(stack)[1] ?? 0, 0.03, HEIGHT);
    expect(under(stack, 1)).toEqual(['table', 0]);
    expectNear(
      stack.supports.find(({ upper, lower }) => upper === 1 && lower === 'table')?.closedMm ?? 0,
      0.03,
      HEIGHT,
    );
  });

  it('a ball in a nest of four cubes: centre sqrt(1/8) of the edge above the tops (design study, derived)', () => {
    const nest = solidsOf({ cube: cube(50), ball: sphere(25) });
    const cubes = [-1, 1].flatMap((x) => [-1, 1].map((y) => put('cube', 37.5 * x, 37.5 * y)));
    const stack = stackOf([...cubes, put('ball', 0, 0, { resting: 'round' })], nest);
    expectNear((stack.pieces[4]?.bottomMm ?? 0) + 25, 50 + 50 * Math.sqrt(0.125), HEIGHT);
    expect(under(stack, 4).sort()).toEqual([0, 1, 2, 3]);
    for (const { lower, normal } of stack.supports.filter(({ upper }) => upper === 4)) {
      const spot = stack.pieces[lower as number];
      const corner = spot?.outline.kind === 'polygon' ? spot.outline.points : [];
      const [x, y] = corner.reduce((best, p) => (Math.hypot(...p) < Math.hypot(...best) ? p : best));
      // From the cube's inner corner to the centre of the ball, a radius away.
      expectPointNear(normal, [-x / 25, -y / 25, Math.sqrt(0.5)], 1e-10);
    }
  });

  it('a ball between two logs', () => {
    const logs = solidsOf({ log: cylinder(20, 90), ball: sphere(15) });
    const side = { resting: 'side' } as const;
    const stack = stackOf(
      [put('log', -20, 0, side), put('log', 20, 0, side), put('ball', 0, 7, { resting: 'round' })],
      logs,
    );
    // Centres of a log and the ball are 35 apart, 20 of it sideways.
    expectNear((stack.pieces[2]?.bottomMm ?? 0) + 15, 20 + Math.sqrt(35 ** 2 - 20 ** 2), HEIGHT);
    expect(under(stack, 2).sort()).toEqual([0, 1]);
  });
});

describe('side by side', () => {
  const solids = solidsOf({ cube: cube(50), ball: sphere(40), tile: box(60, 60, 30) });
  const SEED = 1201;
  const angle = fc.double({ min: -7, max: 7, noNaN: true });
  const shift = fc.double({ min: -900, max: 900, noNaN: true });

  it(`flush boxes, turned and shifted together, never climb (seed ${SEED})`, () => {
    fc.assert(
      fc.property(angle, shift, shift, (turnRad, x, y) => {
        const at = (u: number, v: number): readonly [number, number] => {
          const [c, s] = [Math.cos(turnRad), Math.sin(turnRad)];
          return [x + c * u - s * v, y + s * u + c * v];
        };
        const block = [at(0, 0), at(50, 0), at(50, 50), at(0, 50), at(100, 20)];
        const stack = stackOf(
          block.map(([px, py]) => put('cube', px, py, { turnRad })),
          solids,
        );
        expect(bottoms(stack)).toEqual([0, 0, 0, 0, 0]);
      }),
      { seed: SEED },
    );
  });

  it('an overlap seen from above of 0.05 is side by side, one of 0.06 is not', () => {
    expect(bottoms(stackOf([put('cube', 0, 0), put('cube', 49.951, 0)], solids))).toEqual([0, 0]);
    expect(bottoms(stackOf([put('cube', 0, 0), put('cube', 49.94, 0)], solids))).toEqual([0, 50]);
  });

  it('a ball bulges over a tile and still stands on the table', () => {
    // The ball's surface is 30 high at sqrt(40^2 - 10^2) = 38.7 from its axis; the tile begins at 39.
    const stack = stackOf([put('tile', 0, 0), put('ball', 69, 0, { resting: 'round' })], solids);
    expect(bottoms(stack)).toEqual([0, 0]);
    expect(under(stack, 1)).toEqual(['table']);
  });
});
