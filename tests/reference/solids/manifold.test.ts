// A third opinion from manifold-3d (Apache-2.0, WASM), which knows meshes and hulls but none of our formulas:
// hulls of the points of our meshes, and its own cube, cylinder and sphere.

import type { Solid, SolidSpec } from '@cairnmark/geometry';
import { CATALOGUE, meshOf } from '@cairnmark/geometry';
import Module from 'manifold-3d';
import { describe, expect, test } from 'vitest';
import { expectNear } from '../../tools/within.ts';
import { pointsOf } from '../mesh-integrals.ts';
import { solidOf } from '../solid-cases.ts';

const wasm = await Module();
wasm.setup();
const { Manifold } = wasm;

/** Its hull joins points in doubles, after scaling; the corners of our solids come back to a few units of 1e-15. */
const FLAT = 1e-12;
/** Refined from 64 and 128 facets: 17 x^4 / 960 with x = 2 pi / 64, see mass.test.ts. */
const ROUND = 2e-6;
const FACETS = 64;

describe('hull of the mesh', () => {
  test.each(Object.values(CATALOGUE))('$id', ({ id, example }) => {
    const solid = solidOf({ solid: id, sizes: example });
    const [coarse, fine] = [FACETS, 2 * FACETS].map((facets) => hullOf(solid, facets));
    const flat = solid.curvedSurfaces.length === 0;
    const towards = (a: number, b: number): number => (flat ? b : b + (b - a) / 3);
    const relative = flat ? FLAT : ROUND;
    expectNear(towards(coarse!.volume, fine!.volume), solid.volumeMm3, { relative }, 'volume');
    expectNear(towards(coarse!.surface, fine!.surface), solid.surfaceMm2, { relative }, 'surface');
    if (flat) expect(fine!.vertices).toBe(solid.counts.vertices);
  });
});

describe('its own solids', () => {
  test('box 70 x 50 x 30', () => {
    const theirs = Manifold.cube([70, 50, 30], true);
    const ours = solidOf({ solid: 'rectangular-prism', sizes: { length: 70, width: 50, height: 30 } });
    expectNear(theirs.volume(), ours.volumeMm3, { relative: FLAT });
    expectNear(theirs.surfaceArea(), ours.surfaceMm2, { relative: FLAT });
    theirs.delete();
  });

  test.each<readonly [SolidSpec, number, number, number]>([
    [{ solid: 'cylinder', sizes: { radius: 30, height: 70 } }, 70, 30, 30],
    [{ solid: 'cone', sizes: { radius: 30, height: 70 } }, 70, 30, 0],
    [{ solid: 'cone-frustum', sizes: { radius: 50, topRadius: 30, height: 70 } }, 70, 50, 30],
  ])('$0.solid as its cylinder of 512 facets', (spec, height, low, high) => {
    const facets = 512;
    const theirs = Manifold.cylinder(height, low, high, facets, true);
    // Level cuts are inscribed polygons: (n / 2 pi) sin(2 pi / n) of the disc.
    const share = Math.sin((2 * Math.PI) / facets) / ((2 * Math.PI) / facets);
    expectNear(theirs.volume(), solidOf(spec).volumeMm3 * share, { relative: FLAT });
    theirs.delete();
  });

  test('ball of radius 35 as its sphere of 512 facets, 3.5e-4 x (256 / 512)^2 low', () => {
    const theirs = Manifold.sphere(35, 512);
    const ours = solidOf({ solid: 'sphere', sizes: { radius: 35 } });
    expectNear(theirs.volume() / ours.volumeMm3, 1 - 8.8e-5, { absolute: 5e-6 });
    theirs.delete();
  });
});

function hullOf(solid: Solid, facets: number): { volume: number; surface: number; vertices: number } {
  const points = pointsOf(meshOf(solid, facets).positions).map(([x, y, z]): [number, number, number] => [x, y, z]);
  const hull = Manifold.hull(points);
  const found = { volume: hull.volume(), surface: hull.surfaceArea(), vertices: hull.numVert() };
  hull.delete();
  return found;
}
