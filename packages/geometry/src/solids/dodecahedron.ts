// Regular dodecahedron of edge a, mm, on a face: four level rings of five vertices. The rings in the middle are larger
// by the golden ratio, and each lies as far from the end next to it as the circumradius of the face.
// Formulas: pages named in the tests (15 + 7 root 5, 3 root (25 + 10 root 5)).

import { cubed, num, over, root, squared, sum, sym, times } from '../kernel/formula.ts';
import { edgesOf, loopOf, ring, seenFromBelow } from './bands.ts';
import { edgeSolid } from './edge-solid.ts';
import { circumradius } from './ngon.ts';
import type { Loop, Polyhedron } from './polyhedron.ts';

const a = sym('a');
const ROOT_5 = root(num(5));
const VOLUME = times(over(sum(num(15), times(num(7), ROOT_5)), num(4)), cubed(a));
const SURFACE = times(num(3), root(sum(num(25), times(num(10), ROOT_5))), squared(a));
const GOLDEN = (1 + Math.sqrt(5)) / 2;
/** Radius of the inscribed ball of a dodecahedron of edge 1; the height is twice that. */
const IN_RADIUS = Math.sqrt((25 + 11 * Math.sqrt(5)) / 40);

export const dodecahedron = edgeSolid({
  id: 'dodecahedron',
  exampleMm: 30,
  volume: VOLUME,
  surface: SURFACE,
  shape,
  sides: { face: 0 },
});

function shape(edgeMm: number): Polyhedron {
  const [r, h, turn] = [circumradius(5, edgeMm), 2 * IN_RADIUS * edgeMm, Math.PI / 5];
  const vertices = [
    ...ring(5, r, 0),
    ...ring(5, GOLDEN * r, r),
    ...ring(5, GOLDEN * r, h - r, turn),
    ...ring(5, r, h, turn),
  ];
  const [low, high, top] = [5, 10, 15];
  const flowers = edgesOf(5).flatMap(([i, j]): Loop[] => [
    [i, j, low + j, high + i, low + i],
    [high + i, low + j, high + j, top + j, top + i],
  ]);
  return { vertices, loops: [seenFromBelow(5), ...flowers, loopOf(5, top)] };
}
