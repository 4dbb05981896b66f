// The prism over the triangle 3-4-5, 10 high: a solid whose shell balances over another point than the full piece.
// Figures: worked out by hand from the right angle, and in the table of tests/corpus/solids.json, note on this row.

import { describe, expect, test } from 'vitest';
import { expectNear, expectPointNear } from '../../tools/within.ts';
import { solidOf } from '../solid-cases.ts';

const DEGREE = Math.PI / 180;
const NEAR = { relative: 1e-12 };

describe('prism over the triangle 3-4-5, height 10: full solid and shell balance over different points', () => {
  // From the right angle, legs along x (4) and y (3): full (4/3, 1), walls alone (3/2, 1), closed shell (1.4848..., 1).
  const solid = solidOf({ solid: 'triangular-prism', sizes: { a: 3, b: 4, c: 5, height: 10 } });
  const [walls, closed] = [
    [3 / 2, 1],
    [1.48484848484848, 1],
  ] as const;
  const base = solid.flatFaces[0]!;
  if (base.kind === 'disc') throw new Error('a prism has no disc');
  // Corner C, where the sides a and b meet at a right angle, is the furthest one from side c at the front.
  const right = base.corners.reduce((most, corner) => (corner[1] > most[1] ? corner : most));
  const others = base.corners.filter((corner) => corner !== right);
  const legs = others.map((corner) => corner.map((value, k) => value - right[k]!));
  const [long, short] = legs.sort((p, q) => Math.hypot(...q) - Math.hypot(...p));
  const along = (point: readonly number[], leg: readonly number[]): number =>
    point.reduce((sum, value, k) => sum + ((value - right[k]!) * leg[k]!) / Math.hypot(...leg), 0);
  const plan = (point: readonly number[]): readonly number[] => [along(point, long!), along(point, short!)];

  test('the full centre is the axis, at a third of both legs', () => {
    expectPointNear(solid.centroids.full, [0, 0, 5], 1e-14);
    expectPointNear(plan(solid.centroids.full), [4 / 3, 1], 1e-13);
  });

  test('the shells lie elsewhere, and tip sooner over the hypotenuse', () => {
    expectPointNear(plan(solid.centroids.closedShell), closed, 1e-13);
    // Open at the base: walls (area 120, z 5) and one triangle (area 6, z 10, over the full centre).
    const open = [(120 * walls[0] + 6 * (4 / 3)) / 126, 1];
    expectPointNear(plan(solid.centroids.openShell!), open, 1e-13);
    const toFront = (point: readonly number[]): number => point[1]! - Math.min(...base.corners.map(([, y]) => y));
    expectNear(toFront(solid.centroids.full), 0.8, NEAR);
    expectNear(toFront(solid.centroids.closedShell), 0.709090909090909, NEAR);
    expectNear(Math.atan2(toFront(solid.centroids.full), 5) / DEGREE, 9.09027692082232, NEAR);
    expectNear(Math.atan2(toFront(solid.centroids.closedShell), 5) / DEGREE, 8.07175636667336, NEAR);
  });

  test('on its sides it is as high as the triangle over them', () => {
    const heights = Object.fromEntries(solid.restings.map(({ id, heightMm }) => [id, heightMm]));
    expect(Object.keys(heights)).toEqual(['base', 'side-a', 'side-b', 'side-c']);
    expectNear(heights['side-a']!, 4, NEAR);
    expectNear(heights['side-b']!, 3, NEAR);
    expectNear(heights['side-c']!, 12 / 5, NEAR);
  });
});
