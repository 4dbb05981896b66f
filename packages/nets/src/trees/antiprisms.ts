// Antiprisms and the octahedron, which is one over a triangle: a strip of triangles, an end on a middle one on each side.
// Faces: 0 the base, 1 the top, then the triangles from the front.

import { from, strip } from './strips.ts';
import type { NetRecipe } from './types.ts';

export const antiprism: NetRecipe = {
  kind: 'faces',
  usual: (table) => [strip(table, from(2, table.faces.length - 2), [0, 1])],
};
