// Regular octahedron of edge a, mm, on a face: the antiprism over a triangle.
// Formulas: Weisstein, MathWorld (from memory), held against the values of an independent table in the tests.

import { cubed, num, over, root, squared, sym, times } from '../kernel/formula.ts';
import { antiprismBetween, ring } from './bands.ts';
import { edgeSolid } from './edge-solid.ts';
import { circumradius } from './ngon.ts';

const a = sym('a');

export const octahedron = edgeSolid({
  id: 'octahedron',
  exampleMm: 50,
  volume: times(over(root(num(2)), num(3)), cubed(a)),
  surface: times(num(2), root(num(3)), squared(a)),
  shape(edgeMm) {
    const radius = circumradius(3, edgeMm);
    return antiprismBetween(ring(3, radius, 0), ring(3, radius, Math.sqrt(2 / 3) * edgeMm, Math.PI / 3));
  },
  sides: { face: 0 },
});
