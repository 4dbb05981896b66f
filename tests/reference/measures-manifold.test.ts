// A third opinion on whole builds: manifold-3d (Apache-2.0), which joins solids as meshes and has none of our methods.
// Flat-faced pieces on a grid of whole millimetres, unturned or by quarters, so that faces that touch do so exactly.
// Volume and surface of the joined solid; area, edges and hull of its shadow. Lengths mm.

import type { SolidSpec } from '@cairnmark/geometry';
import { buildStack, makeSolid } from '@cairnmark/geometry';
import type { CrossSection, Manifold, Vec3 } from 'manifold-3d';
import manifoldModule from 'manifold-3d';
import { describe, it } from 'vitest';
import { share } from '../tools/share.ts';
import { expectNear } from '../tools/within.ts';
import { factsOf, kit, laid, PLAIN, put, valueIn } from './measured-builds.ts';
import { seeded } from './seeded.ts';

const SEED = 5_137;
const BUILDS = share(600, 60);
const TIMEOUT_MS = share(600_000, 60_000);

/** Relative: the walking grid is 1e-6 mm on figures of some 100 mm; the meshes are in double precision. */
const NEAR = { relative: 1e-7 };

const SPECS: Readonly<Record<string, SolidSpec>> = {
  slab: { solid: 'rectangular-prism', sizes: { length: 70, width: 50, height: 20 } },
  bar: { solid: 'rectangular-prism', sizes: { length: 90, width: 22, height: 30 } },
  cube: { solid: 'cube', sizes: { edge: 40 } },
  stump: { solid: 'rectangular-frustum', sizes: { length: 60, width: 40, topLength: 30, height: 34 } },
  roof: { solid: 'rectangular-pyramid', sizes: { length: 50, width: 30, height: 26 } },
};
const kinds = Object.keys(SPECS);
const solids = new Map(
  Object.entries(SPECS).map(([kind, spec]) => {
    const made = makeSolid(spec);
    if (!made.ok) throw new Error(`${kind} cannot be made`);
    return [kind, made.value];
  }),
);

const module = await manifoldModule();
module.setup();

/** The pieces of the build as meshes: convex hulls of corners rounded to 1e-6 mm, so that quarter turns are exact. */
function joined(pieces: Parameters<typeof buildStack>[0]): Manifold {
  const stack = buildStack(pieces, solids, 0);
  if (!stack.ok) throw new Error('refused');
  const exact = (x: number): number => Math.round(x * 1e6) / 1e6;
  const bodies = stack.value.pieces.map(({ body }) => {
    const corners = body.flatMap((part) => (part.kind === 'points' ? part.points : []));
    return module.Manifold.hull(corners.map(([x, y, z]): Vec3 => [exact(x), exact(y), exact(z)]));
  });
  return module.Manifold.union(bodies);
}

/** All edges of the shadow, outer and inner: how corners that touch are told apart does not matter to their sum. */
function perimeterOf(shadow: CrossSection): number {
  return shadow
    .toPolygons()
    .flatMap((ring) => ring.map((corner, index) => [corner, ring.at(index - 1) ?? corner] as const))
    .reduce((total, [a, b]) => total + Math.hypot(a[0] - b[0], a[1] - b[1]), 0);
}

function drawBuild(draw: () => number): ReturnType<typeof put>[] {
  const whole = (least: number, most: number): number => least + Math.floor(draw() * (most - least + 1));
  return Array.from({ length: whole(1, 8) }, () => {
    const kind = kinds[whole(0, kinds.length - 1)] ?? 'cube';
    return put(kind, 10 * whole(-7, 7), 10 * whole(-7, 7), 'base', (whole(0, 3) * Math.PI) / 2);
  });
}

describe('against joined meshes', () => {
  it(
    `volume, surface that can be touched, and shadow of ${BUILDS} builds [seed ${SEED}]`,
    () => {
      const draw = seeded(SEED);
      for (let n = 0; n < BUILDS; n += 1) {
        const pieces = drawBuild(draw);
        const what = `build ${n}`;
        const facts = factsOf(laid(...pieces), kit(SPECS), { ...PLAIN, base: 'contact-patches' });
        const mesh = joined(pieces);
        expectNear(valueIn(facts, 'volume'), mesh.volume(), NEAR, `volume of ${what}`);
        const onTable = valueIn(facts, 'base-area');
        expectNear(valueIn(facts, 'touchable-surface') + onTable, mesh.surfaceArea(), NEAR, `surface of ${what}`);
        const shadow = mesh.project();
        expectNear(valueIn(facts, 'footprint-area'), shadow.area(), NEAR, `shadow of ${what}`);
        expectNear(valueIn(facts, 'hull-area'), shadow.hull().area(), NEAR, `hull of ${what}`);
        const edges = valueIn(facts, 'footprint-perimeter') + valueIn(facts, 'footprint-inner-perimeter');
        expectNear(edges, perimeterOf(shadow), NEAR, `edges of the shadow of ${what}`);
      }
    },
    TIMEOUT_MS,
  );
});
