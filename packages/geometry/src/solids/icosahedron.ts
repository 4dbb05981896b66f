// Regular icosahedron of edge a, mm, on a face: four level rings of three vertices. The rings in the middle are larger
// by the golden ratio g, and lie on either side of half height by the in-radius over g^3.
// Formulas: Weisstein, MathWorld (from memory), held against the values of an independent table in the tests.

import { cubed, num, over, root, squared, sum, sym, times } from '../kernel/formula.ts';
import { edgesOf, loopOf, ring, seenFromBelow } from './bands.ts';
import { edgeSolid } from './edge-solid.ts';
import { circumradius } from './ngon.ts';
import type { Loop, Polyhedron } from './polyhedron.ts';

const a = sym('a');
const VOLUME = times(over(times(num(5), sum(num(3), root(num(5)))), num(12)), cubed(a));
const SURFACE = times(num(5), root(num(3)), squared(a));
const GOLDEN = (1 + Math.sqrt(5)) / 2;
/** Radius of the inscribed ball of an icosahedron of edge 1; the height is twice that. */
const IN_RADIUS = GOLDEN ** 2 / (2 * Math.sqrt(3));

export const icosahedron = edgeSolid({
  id: 'icosahedron',
  exampleMm: 40,
  volume: VOLUME,
  surface: SURFACE,
  shape,
  sides: { face: 0 },
});

function shape(edgeMm: number): Polyhedron {
  const [r, half, turn] = [circumradius(3, edgeMm), IN_RADIUS * edgeMm, Math.PI / 3];
  const vertices = [
    ...ring(3, r, 0),
    ...ring(3, GOLDEN * r, half - half / GOLDEN ** 3, turn),
    ...ring(3, GOLDEN * r, half + half / GOLDEN ** 3),
    ...ring(3, r, 2 * half, turn),
  ];
  const [low, high, top] = [3, 6, 9];
  const around = edgesOf(3).flatMap(([i, j]): Loop[] => [
    [i, j, low + i],
    [low + i, j, high + j],
    [j, low + j, high + j],
    [low + i, high + j, top + i],
    [high + i, low + i, top + i],
    [high + j, top + j, top + i],
  ]);
  return { vertices, loops: [seenFromBelow(3), ...around, loopOf(3, top)] };
}
