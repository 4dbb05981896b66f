// Every row of tests/corpus/solids.json (42 solids worked out with 50 digits, see tests/corpus/README.md) against the
// catalogue. A row that several entries can make is asked of each of them. Lengths of a row are taken as mm.

import type { Solid, SolidSpec, Vec2 } from '@cairnmark/geometry';
import { describe, expect, test } from 'vitest';
import rows from '../../corpus/solids.json' with { type: 'json' };
import { expectNear } from '../../tools/within.ts';
import { solidOf } from '../solid-cases.ts';

/** The rows give 15 digits or more; a double in a formula of ten operations keeps twelve. */
const NEAR = { relative: 1e-12 };
const DEGREE = Math.PI / 180;

const prism = (sides: number, edge: number, height: number): SolidSpec => ({
  solid: 'regular-prism',
  sizes: { sides, edge, height },
});
const pyramid = (sides: number, edge: number, height: number): SolidSpec => ({
  solid: 'regular-pyramid',
  sizes: { sides, edge, height },
});
const box = (length: number, width: number, height: number): SolidSpec => ({
  solid: 'rectangular-prism',
  sizes: { length, width, height },
});
const triangle = (a: number, b: number, c: number, height: number): SolidSpec => ({
  solid: 'triangular-prism',
  sizes: { a, b, c, height },
});
const squarePyramid = (edge: number, height: number): readonly SolidSpec[] => [
  pyramid(4, edge, height),
  { solid: 'rectangular-pyramid', sizes: { length: edge, width: edge, height } },
];
const squareFrustum = (edge: number, topEdge: number, height: number): readonly SolidSpec[] => [
  { solid: 'regular-frustum', sizes: { sides: 4, edge, topEdge, height } },
  { solid: 'rectangular-frustum', sizes: { length: edge, width: edge, topLength: topEdge, height } },
];
const round = (solid: 'cylinder' | 'cone', radius: number, height: number): SolidSpec => ({
  solid,
  sizes: { radius, height },
});
const ball = (solid: 'sphere' | 'hemisphere', radius: number): SolidSpec => ({ solid, sizes: { radius } });

const SPECS: Readonly<Record<keyof typeof rows, readonly SolidSpec[]>> = {
  'cube a=1': [{ solid: 'cube', sizes: { edge: 1 } }, box(1, 1, 1), prism(4, 1, 1)],
  'cube a=5': [{ solid: 'cube', sizes: { edge: 5 } }, box(5, 5, 5), prism(4, 5, 5)],
  'cuboid 6x4x3 (h=3)': [box(6, 4, 3)],
  'cuboid 14x9x17 (h=17)': [box(14, 9, 17)],
  'rt-triangle prism 3-4-5, h=10': [triangle(3, 4, 5, 10), triangle(5, 3, 4, 10)],
  'triangular prism a=1, h=1': [prism(3, 1, 1), triangle(1, 1, 1, 1)],
  'triangular prism a=4, h=10': [prism(3, 4, 10), triangle(4, 4, 4, 10)],
  'pentagonal prism a=1, h=1': [prism(5, 1, 1)],
  'pentagonal prism a=4, h=10': [prism(5, 4, 10)],
  'hexagonal prism a=1, h=1': [prism(6, 1, 1)],
  'hexagonal prism a=4, h=10': [prism(6, 4, 10)],
  'octagonal prism a=1, h=1': [prism(8, 1, 1)],
  'octagonal prism a=4, h=10': [prism(8, 4, 10)],
  'square pyramid a=6, h=4 (slant 5)': squarePyramid(6, 4),
  'square pyramid a=10, h=12 (slant 13)': squarePyramid(10, 12),
  'square pyramid, all edges 1 (J1)': squarePyramid(1, Math.SQRT1_2),
  'triangular pyramid a=4, h=10': [pyramid(3, 4, 10)],
  'pentagonal pyramid a=4, h=10': [pyramid(5, 4, 10)],
  'hexagonal pyramid a=4, h=10': [pyramid(6, 4, 10)],
  'regular tetrahedron a=1 (on a face)': [
    { solid: 'tetrahedron', sizes: { edge: 1 } },
    pyramid(3, 1, Math.sqrt(2 / 3)),
  ],
  'regular octahedron a=1 (on a face)': [{ solid: 'octahedron', sizes: { edge: 1 } }],
  'regular dodecahedron a=1 (on a face)': [{ solid: 'dodecahedron', sizes: { edge: 1 } }],
  'regular icosahedron a=1 (on a face)': [{ solid: 'icosahedron', sizes: { edge: 1 } }],
  'square antiprism a=1 (on a square)': [{ solid: 'antiprism', sizes: { sides: 4, edge: 1 } }],
  'cuboctahedron a=1 (on a square)': [{ solid: 'cuboctahedron', sizes: { edge: 1 } }],
  'square frustum 10 -> 4, h=4 (slant 5)': squareFrustum(10, 4, 4),
  'square frustum 4 -> 2, h=6 (Moscow papyrus 14)': squareFrustum(4, 2, 6),
  'hexagonal frustum 4 -> 2, h=6': [{ solid: 'regular-frustum', sizes: { sides: 6, edge: 4, topEdge: 2, height: 6 } }],
  'cylinder r=1.0, h=1.0': [round('cylinder', 1, 1)],
  'cylinder r=3.0, h=5.0': [round('cylinder', 3, 5)],
  'cylinder r=4.0, h=13.0': [round('cylinder', 4, 13)],
  'cone r=1.0, h=1.0': [round('cone', 1, 1)],
  'cone r=3.0, h=4.0': [round('cone', 3, 4)],
  'cone r=5.0, h=12.0': [round('cone', 5, 12)],
  'cone r=2.0, h=6.0': [round('cone', 2, 6)],
  'cone frustum R=6.0, r=3.0, h=4.0': [{ solid: 'cone-frustum', sizes: { radius: 6, topRadius: 3, height: 4 } }],
  'cone frustum R=5.0, r=2.0, h=4.0': [{ solid: 'cone-frustum', sizes: { radius: 5, topRadius: 2, height: 4 } }],
  'sphere r=1.0': [ball('sphere', 1)],
  'sphere r=3.0': [ball('sphere', 3)],
  'sphere r=6.0': [ball('sphere', 6)],
  'hemisphere r=1.0, flat face down': [ball('hemisphere', 1)],
  'hemisphere r=3.0, flat face down': [ball('hemisphere', 3)],
};

/**
 * Here `rin` is the in-radius of the 3-4-5 triangle, about its incentre. Its centre of mass is not there, so the tilts
 * of the row are none of this solid: triangle-3-4-5.test.ts has the true ones.
 */
const OFF_CENTRE = 'rt-triangle prism 3-4-5, h=10';

const cases = Object.entries(rows).flatMap(([name, row]) => {
  return SPECS[name as keyof typeof rows].map((spec) => ({ name, row, spec }));
});

test('every row of the table has its solids, and no solid is without a row', () => {
  expect(Object.keys(SPECS)).toEqual(Object.keys(rows));
  expect(Object.keys(rows).length).toBe(42);
});

describe('a row of the table', () => {
  test.each(cases)('$name as $spec.solid', ({ name, row, spec }) => {
    const solid = solidOf(spec);
    const { full, closedShell, openShell } = solid.centroids;
    near(solid.volumeMm3, row.V, 'V');
    near(solid.surfaceMm2, row.SA, 'SA');
    near(solid.lateralMm2, row.LA, 'LA');
    near(solid.slantMm, row.slant, 'slant');
    near(solid.restings[0]!.heightMm, row.h, 'h');
    near(full[2], row.zs, 'zs');
    near(closedShell[2], row.zc, 'zc');
    near(openShell === null ? null : openShell[2], row.znb, 'znb');
    if (row.FEV !== null) {
      expect([solid.counts.flatFaces, solid.counts.straightEdges, solid.counts.vertices]).toEqual(row.FEV);
      expect(solid.counts).toMatchObject({ curvedSurfaces: 0, curvedEdges: 0, apexes: 0 });
    }
    if (name === OFF_CENTRE) return;
    const inradius = footing(solid);
    expectNear(inradius, Number(row.rin), inradius === 0 ? { absolute: 0 } : NEAR, 'rin');
    if (row.tip_solid === null) return;
    near(Math.atan2(inradius, full[2]) / DEGREE, row.tip_solid, 'tip_solid');
    near(Math.atan2(inradius, closedShell[2]) / DEGREE, row.tip_shell, 'tip_shell');
    near(openShell === null ? null : Math.atan2(inradius, openShell[2]) / DEGREE, row.tip_nobase, 'tip_nobase');
  });
});

function near(actual: number | null, expected: string | null, what: string): void {
  if (expected === null || actual === null) expect(actual, what).toBe(expected);
  else expectNear(actual, Number(expected), NEAR, what);
}

/**
 * How far the plan of the centre of mass lies inside the face it stands on: from the flat face that looks down, and
 * where the outline is no wider than it, from the outline too.
 */
function footing(solid: Solid): number {
  const [resting] = solid.restings;
  const under = solid.flatFaces.find(({ normal }) => normal[2] < -1 + 1e-12);
  if (under === undefined) return 0;
  if (under.kind === 'disc') {
    expect(resting!.outline).toEqual({ kind: 'disc', centre: [0, 0], radiusMm: under.radiusMm });
    return under.radiusMm;
  }
  const face = clearance(under.corners.map(([x, y]): Vec2 => [x, y]).reverse());
  if (resting!.outline.kind === 'polygon' && resting!.outline.points.length === under.corners.length) {
    const outline = clearance(resting!.outline.points);
    if (solid.id !== 'cuboctahedron') expectNear(outline, face, NEAR, 'outline');
    else expectNear(outline, Math.SQRT1_2, NEAR, 'the outline of a cuboctahedron is its middle ring');
  }
  return face;
}

/** The least distance from the origin to a side, positive inside; corners counter-clockwise. */
function clearance(corners: readonly Vec2[]): number {
  const distances = corners.map(([ax, ay], k) => {
    const [bx, by] = corners[(k + 1) % corners.length]!;
    return (ax * by - ay * bx) / Math.hypot(bx - ax, by - ay);
  });
  return Math.min(...distances);
}
