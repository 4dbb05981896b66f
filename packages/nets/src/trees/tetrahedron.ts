// Tetrahedron: a star, the three other faces around the one it stands on; on a page too small for that, a strip.
// Open at the base it is the row of the other three.

import { strip } from './strips.ts';
import type { NetRecipe } from './types.ts';

export const tetrahedron: NetRecipe = {
  kind: 'faces',
  usual: () => [
    {
      joints: [
        [0, 1],
        [0, 2],
        [0, 3],
      ],
    },
  ],
  spare: () => [
    {
      joints: [
        [0, 1],
        [0, 2],
        [2, 3],
      ],
    },
  ],
  open: (table) => [strip(table, [1, 2, 3], [])],
};
