// Cuboctahedron: one tree, kept as data. The square it lies on, a triangle on each of its sides, on each triangle a square
// and on that the next triangle, like the sails of a mill; the last square at the end of one sail. Faces: 0 the lower
// square, then four times a lower triangle, a square and an upper triangle, 13 the upper square.

import type { NetRecipe } from './types.ts';

export const cuboctahedron: NetRecipe = {
  kind: 'faces',
  usual: () => [
    {
      joints: [
        [0, 1],
        [0, 4],
        [0, 7],
        [0, 10],
        [1, 2],
        [4, 5],
        [7, 8],
        [10, 11],
        [2, 3],
        [5, 6],
        [8, 9],
        [11, 12],
        [3, 13],
      ],
    },
  ],
};
