// Tetrahedron: a star, the three other faces around the one it stands on.

import type { NetRecipe } from './types.ts';

export const tetrahedron: NetRecipe = {
  kind: 'faces',
  trees: () => [
    {
      joints: [
        [0, 1],
        [0, 2],
        [0, 3],
      ],
    },
  ],
};
