// The catalogue of solids. A new solid is one file and one line here, and inherits every check of the conformance suite.

import type { Result } from '../kernel/result.ts';
import { failure } from '../kernel/result.ts';
import { antiprism } from './antiprism.ts';
import { cone } from './cone.ts';
import { coneFrustum } from './cone-frustum.ts';
import { cube } from './cube.ts';
import { cuboctahedron } from './cuboctahedron.ts';
import { cylinder } from './cylinder.ts';
import { dodecahedron } from './dodecahedron.ts';
import { hemisphere } from './hemisphere.ts';
import { icosahedron } from './icosahedron.ts';
import { octahedron } from './octahedron.ts';
import { rectangularFrustum } from './rectangular-frustum.ts';
import { rectangularPrism } from './rectangular-prism.ts';
import { rectangularPyramid } from './rectangular-pyramid.ts';
import { regularFrustum } from './regular-frustum.ts';
import { regularPrism } from './regular-prism.ts';
import { regularPyramid } from './regular-pyramid.ts';
import { sphere } from './sphere.ts';
import { tetrahedron } from './tetrahedron.ts';
import { triangularPrism } from './triangular-prism.ts';
import type { SizeIssue, Solid, SolidDefinition, SolidId, SolidSpec } from './types.ts';

/** The solid that a kit names, or every fault of its sizes; paths begin at the spec (["sizes", "radius"]). */
export function makeSolid(spec: SolidSpec): Result<Solid, SizeIssue> {
  const made = definitionOf(spec.solid).make(spec.sizes);
  return made.ok ? made : failure(made.issues.map((issue) => ({ ...issue, path: ['sizes', ...issue.path] })));
}

/** The entry for `id`. Throws RangeError for a name that is no solid: who reads files checks names first. */
export function definitionOf(id: SolidId): SolidDefinition {
  if (!Object.hasOwn(CATALOGUE, id)) throw new RangeError(`no solid is called ${id}`);
  return CATALOGUE[id];
}

/** Every solid by its id, in the order in which they are listed to people. */
export const CATALOGUE: Readonly<Record<SolidId, SolidDefinition>> = {
  cube,
  'rectangular-prism': rectangularPrism,
  'triangular-prism': triangularPrism,
  'regular-prism': regularPrism,
  'rectangular-pyramid': rectangularPyramid,
  'regular-pyramid': regularPyramid,
  'rectangular-frustum': rectangularFrustum,
  'regular-frustum': regularFrustum,
  tetrahedron,
  octahedron,
  dodecahedron,
  icosahedron,
  antiprism,
  cuboctahedron,
  cylinder,
  cone,
  'cone-frustum': coneFrustum,
  sphere,
  hemisphere,
};
