// Volume, surface and centres of mass of every solid, held against sums over the triangles of its mesh.

import { meshOf } from '@cairnmark/geometry';
import { describe, expect, test } from 'vitest';
import { expectNear, expectPointNear } from '../../tools/within.ts';
import { integrate, refined, trianglesOf } from '../mesh-integrals.ts';
import { onEverySolid } from '../solid-cases.ts';

const FACETS = 64;
/**
 * Flat faces are cut into triangles exactly; what is left is rounding over some hundred sums, most of it in solids of
 * which one size is 60 times another.
 */
const FLAT = 1e-12;
/**
 * Round ones are refined from 64 and 128 facets. With x = 2 pi / 64 the facets of a disc hold sin x / x of its area,
 * those of a ball (sin x / x) cos^2 (x / 2) of its volume; refining leaves x^4 / 480 = 2e-7 and 17 x^4 / 960 = 1.7e-6.
 */
const ROUND = 2e-6;

onEverySolid('volume, surface and centres of mass from a mesh', { full: 300, part: 8 }, (solid) => {
  const [coarse, fine] = [FACETS, 2 * FACETS].map((facets) => integrate(trianglesOf(meshOf(solid, facets))));
  const flat = solid.curvedSurfaces.length === 0;
  const mesh = flat ? fine! : refined(coarse!, fine!);
  const relative = flat ? FLAT : ROUND;
  const reachMm = relative * Math.max(...Object.values(solid.sizes), solid.restings[0]!.heightMm);
  expectNear(solid.volumeMm3, mesh.volume, { relative }, 'volume');
  expectNear(solid.surfaceMm2, mesh.surface, { relative }, 'surface');
  expectPointNear(solid.centroids.full, mesh.centroid, reachMm, 'full centre');
  expectPointNear(solid.centroids.closedShell, mesh.shellCentroid, reachMm, 'closed shell');
  if (solid.centroids.openShell !== null) {
    expectPointNear(solid.centroids.openShell, mesh.openShellCentroid, reachMm, 'open shell');
  }
  expectPointNear(solid.centroids.full.slice(0, 2), [0, 0], FLAT * 200, 'the axis');
});

describe('the mesh sums themselves', () => {
  test('a tetrahedron with its right angle at (3, 5, 7): a sixth of the box, centre a quarter in', () => {
    const [o, a, b, c] = [
      [3, 5, 7],
      [5, 5, 7],
      [3, 8, 7],
      [3, 5, 11],
    ] as const;
    const sums = integrate([
      [o, b, a],
      [o, a, c],
      [o, c, b],
      [a, b, c],
    ]);
    expectNear(sums.volume, (2 * 3 * 4) / 6, { relative: 1e-14 });
    expectPointNear(sums.centroid, [3 + 2 / 4, 5 + 3 / 4, 7 + 4 / 4], 1e-13);
    expectNear(sums.surface, 3 + 4 + 6 + Math.sqrt(3 ** 2 + 4 ** 2 + 6 ** 2), { relative: 1e-14 });
    expect(sums.openShellCentroid).toEqual(sums.shellCentroid);
  });
});
