// How each solid of the catalogue is cut. A new solid needs a line here, and one file beside this one unless it is cut
// like another.

import type { SolidId } from '@cairnmark/geometry';
import { antiprism } from './antiprisms.ts';
import { cuboctahedron } from './cuboctahedron.ts';
import { dodecahedron } from './dodecahedron.ts';
import { rectangularFrustum, regularFrustum } from './frustums.ts';
import { icosahedron } from './icosahedron.ts';
import { rectangularPrism, regularPrism, triangularPrism } from './prisms.ts';
import { pyramid } from './pyramids.ts';
import { tetrahedron } from './tetrahedron.ts';
import type { NetRecipe } from './types.ts';

const ROUND: NetRecipe = { kind: 'round' };
/** Gores for a ball take longer to cut than a lesson has: a ball is bought. */
const BOUGHT: NetRecipe = { kind: 'none' };

export const RECIPES: Readonly<Record<SolidId, NetRecipe>> = {
  cube: regularPrism,
  'rectangular-prism': rectangularPrism,
  'triangular-prism': triangularPrism,
  'regular-prism': regularPrism,
  'rectangular-pyramid': pyramid,
  'regular-pyramid': pyramid,
  'rectangular-frustum': rectangularFrustum,
  'regular-frustum': regularFrustum,
  tetrahedron,
  octahedron: antiprism,
  dodecahedron,
  icosahedron,
  antiprism,
  cuboctahedron,
  cylinder: ROUND,
  cone: ROUND,
  'cone-frustum': ROUND,
  sphere: BOUGHT,
  hemisphere: BOUGHT,
};
