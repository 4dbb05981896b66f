// Dodecahedron: two flowers of six pentagons that touch at one petal each. Faces: 0 the base, then five times a petal of
// the base and the petal of the top after it, 11 the top.

import type { Joint } from '../unfold/unfold.ts';
import type { NetRecipe } from './types.ts';

const LOWER = [1, 3, 5, 7, 9];
const UPPER = [2, 4, 6, 8, 10];
const [BASE, TOP] = [0, 11];
/** The petals that touch: to the right of the base. */
const [LAST, FIRST] = [3, 4];

export const dodecahedron: NetRecipe = {
  kind: 'faces',
  usual: () => [
    {
      joints: [
        ...LOWER.map((petal): Joint => [BASE, petal]),
        [LAST, FIRST],
        [FIRST, TOP],
        ...UPPER.filter((petal) => petal !== FIRST).map((petal): Joint => [TOP, petal]),
      ],
    },
  ],
};
