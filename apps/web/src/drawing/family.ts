// The families of solids that share a colour. Colour never stands alone: a name and a drawing are always beside it.

import type { SolidId } from '@cairnmark/geometry';

export type Family = 'box' | 'prism' | 'pyramid' | 'cylinder' | 'cone' | 'ball';

export const FAMILIES: readonly Family[] = ['box', 'prism', 'pyramid', 'cylinder', 'cone', 'ball'];

export const familyOf = (solid: SolidId): Family => FAMILY[solid];

/** The colour of a family, as a custom property of the page. */
export const colourToken = (family: Family): string => `--p-${family}`;

/** A solid of no family of its own goes with what it is made from or nearest to. */
const FAMILY: Readonly<Record<SolidId, Family>> = {
  cube: 'box',
  'rectangular-prism': 'box',
  // A cube with its corners cut off.
  cuboctahedron: 'box',
  'triangular-prism': 'prism',
  'regular-prism': 'prism',
  antiprism: 'prism',
  'rectangular-pyramid': 'pyramid',
  'regular-pyramid': 'pyramid',
  'rectangular-frustum': 'pyramid',
  'regular-frustum': 'pyramid',
  tetrahedron: 'pyramid',
  // Two square pyramids, base to base.
  octahedron: 'pyramid',
  cylinder: 'cylinder',
  cone: 'cone',
  'cone-frustum': 'cone',
  sphere: 'ball',
  hemisphere: 'ball',
  // As near to a ball as flat faces come.
  dodecahedron: 'ball',
  icosahedron: 'ball',
};
