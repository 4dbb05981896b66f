import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bruteForcePlanDepth } from '../../../../tests/reference/plan-brute-force.ts';
import { convexHull } from '../kernel/hull.ts';
import type { Outline } from '../kernel/outline.ts';
import type { Vec2 } from '../kernel/vec.ts';
import { planOverlapDepth } from './plan-overlap.ts';

const disc = (x: number, y: number, radiusMm: number): Outline => ({ kind: 'disc', centre: [x, y], radiusMm });
const polygon = (...points: readonly Vec2[]): Outline => ({ kind: 'polygon', points });
/** A rectangle about (x, y), turned. */
function rectangle(x: number, y: number, width: number, depth: number, turnRad = 0): Outline {
  const [c, s] = [Math.cos(turnRad), Math.sin(turnRad)];
  const at = (u: number, v: number): Vec2 => [x + c * u - s * v, y + s * u + c * v];
  const [u, v] = [width / 2, depth / 2];
  return polygon(at(-u, -v), at(u, -v), at(u, v), at(-u, v));
}

/** Sizes are under 100 mm: a thousand roundings. */
const TOLERANCE_MM = 1e-11;

describe('depth in closed form, whichever piece is the upper one', () => {
  it.each<[string, Outline, Outline, number]>([
    ['discs', disc(0, 0, 3), disc(4, 3, 7), 5],
    ['discs one in the other', disc(0, 0, 3), disc(1, 0, 7), 9],
    ['discs that touch', disc(0, 0, 3), disc(6, 8, 7), 0],
    ['discs apart', disc(0, 0, 3), disc(9, 12, 7), -5],
    ['rectangles', rectangle(0, 0, 10, 6), rectangle(7, 1, 8, 14), 2],
    ['rectangles, one in the other', rectangle(0, 0, 20, 30), rectangle(4, 5, 6, 8), 9],
    ['rectangles flush', rectangle(0, 0, 10, 6), rectangle(9, 0, 8, 14), 0],
    ['rectangles apart', rectangle(0, 0, 10, 6), rectangle(12, 1, 8, 14), -3],
    ['a square on its corner', rectangle(0, 0, 10, 10), rectangle(7, 0, 6, 6, Math.PI / 4), 3 * Math.SQRT2 - 2],
    ['disc over an edge', rectangle(0, 0, 10, 6), disc(7, 1, 3), 1],
    ['disc inside', rectangle(0, 0, 20, 30), disc(4, 5, 3), 9],
    ['disc at a corner', rectangle(0, 0, 10, 6), disc(8, 7, 7), 2],
    ['disc off a corner', rectangle(0, 0, 10, 6), disc(8, 7, 3), -2],
    ['disc off an edge', rectangle(0, 0, 10, 6), disc(1, 8, 3), -2],
  ])('%s', (_, a, b, depthMm) => {
    expect(Math.abs(planOverlapDepth(a, b) - depthMm)).toBeLessThanOrEqual(TOLERANCE_MM);
    expect(Math.abs(planOverlapDepth(b, a) - depthMm)).toBeLessThanOrEqual(TOLERANCE_MM);
  });

  it('a doubled corner changes nothing', () => {
    const doubled = polygon([-5, -3], [-5, -3], [5, -3], [5, 3], [5, 3], [-5, 3]);
    expect(planOverlapDepth(doubled, rectangle(7, 1, 8, 14))).toBe(2);
    expect(planOverlapDepth(doubled, disc(7, 1, 3))).toBe(1);
  });
});

const SEED = 411;
const coordinate = fc.oneof(fc.integer({ min: -9, max: 9 }), fc.double({ min: -9, max: 9, noNaN: true }));
const figure = fc
  .array(fc.tuple(coordinate, coordinate), { minLength: 3, maxLength: 12 })
  .map((points) => convexHull(points, 1e-9))
  .filter((hull) => hull.length > 2);

it(`polygons against every line through two corners (seed ${SEED})`, () => {
  fc.assert(
    fc.property(figure, figure, (a, b) => {
      const depth = planOverlapDepth(polygon(...a), polygon(...b));
      expect(Math.abs(depth - bruteForcePlanDepth(a, b))).toBeLessThanOrEqual(TOLERANCE_MM);
    }),
    { seed: SEED, numRuns: 500 },
  );
});

it('outlines of a thousand corners each', () => {
  const round = (x: number, count: number): Outline =>
    polygon(
      ...Array.from({ length: count }, (_, k): Vec2 => {
        const angleRad = (2 * Math.PI * k) / count;
        return [x + 5 * Math.cos(angleRad), 5 * Math.sin(angleRad)];
      }),
    );
  // Corners of both lie on the line of centres, edges beside it reach less by 1 - cos(pi / 1000), 5e-6 of the radius.
  const depth = planOverlapDepth(round(0, 1000), round(9, 1004));
  expect(Math.abs(depth - 1)).toBeLessThanOrEqual(1e-4);
});
