// Cuboctahedron of edge a, mm, on a square: three level rings of four vertices, 6 squares and 8 triangles.
// Formulas and counts: MathWorld, "Cuboctahedron".

import { cubed, num, over, root, squared, sum, sym, times } from '../kernel/formula.ts';
import { edgesOf, loopOf, ring, seenFromBelow } from './bands.ts';
import { edgeSolid } from './edge-solid.ts';
import { circumradius } from './ngon.ts';
import type { Loop, Polyhedron } from './polyhedron.ts';

const a = sym('a');
const VOLUME = times(over(times(num(5), root(num(2))), num(3)), cubed(a));
const SURFACE = times(sum(num(6), times(num(2), root(num(3)))), squared(a));

export const cuboctahedron = edgeSolid({
  id: 'cuboctahedron',
  exampleMm: 30,
  volume: VOLUME,
  surface: SURFACE,
  shape,
  sides: { square: 0, triangle: 1 },
});

/** The middle ring is a square on the diagonals: its circumradius is the edge. */
function shape(edgeMm: number): Polyhedron {
  const r = circumradius(4, edgeMm);
  const vertices = [...ring(4, r, 0), ...ring(4, edgeMm, r, Math.PI / 4), ...ring(4, r, 2 * r)];
  const [middle, top] = [4, 8];
  const around = edgesOf(4).flatMap(([i, j]): Loop[] => [
    [i, j, middle + i],
    [j, middle + j, top + j, middle + i],
    [top + j, top + i, middle + i],
  ]);
  return { vertices, loops: [seenFromBelow(4), ...around, loopOf(4, top)] };
}
