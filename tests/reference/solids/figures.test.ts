// Single figures of named sources: volumes, radii, counts, dihedral angles.

import { describe, expect, test } from 'vitest';
import { expectNear, expectPrinted } from '../../tools/within.ts';
import { solidOf } from '../solid-cases.ts';

const DEGREE = Math.PI / 180;
/** Figures are given with up to 15 digits. */
const NEAR = { relative: 1e-12 };

describe('single figures', () => {
  test('Moscow Mathematical Papyrus, problem 14: 4 below, 2 above, 6 high, gives 56', () => {
    const solid = solidOf({ solid: 'regular-frustum', sizes: { sides: 4, edge: 4, topEdge: 2, height: 6 } });
    expectNear(solid.volumeMm3, 56, NEAR);
  });

  test('MatheAss E304: dodecahedron of circumradius 1 has a 0.71364418, V 2.7851639, SA 10.514622, in-radius 0.79465447', () => {
    const edge = 0.71364417954618;
    const solid = solidOf({ solid: 'dodecahedron', sizes: { edge } });
    expectPrinted(solid.volumeMm3, [2.7851639, 5e-8]);
    expectPrinted(solid.surfaceMm2, [10.514622, 5e-7]);
    expectPrinted(solid.centroids.full[2], [0.79465447, 5e-9]);
    const corner = solid.flatFaces.flatMap((face) => (face.kind === 'polygon' ? face.corners : []))[0]!;
    expectNear(Math.hypot(corner[0], corner[1], corner[2] - solid.centroids.full[2]), 1, NEAR, 'circumradius');
  });

  test('vias.org: radii of the dodecahedron of edge 1', () => {
    const solid = solidOf({ solid: 'dodecahedron', sizes: { edge: 1 } });
    expectNear(solid.restings[0]!.heightMm / 2, 1.113516364411607, NEAR);
  });

  test('McCooey, Visual Polyhedra: square antiprism', () => {
    const solid = solidOf({ solid: 'antiprism', sizes: { sides: 4, edge: 1 } });
    expectNear(solid.volumeMm3, 0.956999981836717, NEAR);
    expectNear(solid.restings[0]!.heightMm / 2, 0.420448207626857, NEAR);
    expect(solid.counts).toMatchObject({ flatFaces: 10, straightEdges: 16, vertices: 8 });
  });

  test('an antiprism over triangles is the octahedron', () => {
    const antiprism = solidOf({ solid: 'antiprism', sizes: { sides: 3, edge: 7 } });
    const octahedron = solidOf({ solid: 'octahedron', sizes: { edge: 7 } });
    expectNear(antiprism.volumeMm3, octahedron.volumeMm3, NEAR);
    expectNear(antiprism.surfaceMm2, octahedron.surfaceMm2, NEAR);
    expectNear(antiprism.restings[0]!.heightMm, octahedron.restings[0]!.heightMm, NEAR);
  });

  test('a cuboctahedron of edge 1 is 2 root (2/3) high on a triangle', () => {
    const solid = solidOf({ solid: 'cuboctahedron', sizes: { edge: 1 } });
    expect(solid.restings.map(({ id }) => id)).toEqual(['square', 'triangle']);
    expectNear(solid.restings[1]!.heightMm, 1.63299316185545, NEAR);
  });
});

describe('counts of round solids: flat faces, curved surfaces, straight edges, curved edges, vertices, apex', () => {
  test.each([
    ['cylinder', { radius: 3, height: 5 }, [2, 1, 0, 2, 0, 0]],
    ['cone', { radius: 3, height: 5 }, [1, 1, 0, 1, 0, 1]],
    ['cone-frustum', { radius: 5, topRadius: 3, height: 7 }, [2, 1, 0, 2, 0, 0]],
    ['sphere', { radius: 3 }, [0, 1, 0, 0, 0, 0]],
    ['hemisphere', { radius: 3 }, [1, 1, 0, 1, 0, 0]],
  ] as const)('%s', (solid, sizes, expected) => {
    const { counts } = solidOf({ solid, sizes });
    const { flatFaces, curvedSurfaces, straightEdges, curvedEdges, vertices, apexes } = counts;
    expect([flatFaces, curvedSurfaces, straightEdges, curvedEdges, vertices, apexes]).toEqual(expected);
  });
});

describe('regular solids', () => {
  // Dihedral angles, degrees (MathWorld, from memory; recomputed in the table this project was given).
  test.each([
    ['tetrahedron', 70.5287793655093],
    ['cube', 90],
    ['octahedron', 109.471220634491],
    ['dodecahedron', 116.565051177078],
    ['icosahedron', 138.189685104221],
  ] as const)('%s: faces meet at %d degrees, and it tips at half of what is left to 180', (solid, dihedral) => {
    const { flatFaces, centroids } = solidOf({ solid, sizes: { edge: 7 } });
    const [base, ...others] = flatFaces;
    const cosines = others.map(({ normal }) => normal.reduce((sum, value, k) => sum + value * base!.normal[k]!, 0));
    // Faces that share an edge with the base turn away from it the least.
    expectNear(180 - Math.acos(Math.max(...cosines)) / DEGREE, dihedral, NEAR);
    if (base!.kind === 'disc') throw new Error('a regular solid has no disc');
    const [[ax, ay], [bx, by]] = [base!.corners[0]!, base!.corners[1]!];
    const inradius = Math.hypot((ax + bx) / 2, (ay + by) / 2);
    expectNear(Math.atan2(inradius, centroids.full[2]) / DEGREE, (180 - dihedral) / 2, NEAR);
  });
});
