// The surface of a solid in its own frame as triangles with their normals. mm.

import type { Solid } from '@cairnmark/geometry';
import { meshOf } from '@cairnmark/geometry';
import { BufferAttribute, BufferGeometry } from 'three';
import { toCreasedNormals } from 'three/addons/utils/BufferGeometryUtils.js';

/** `facets` on a full circle of a round solid. Triangles share no vertex, so that each has the normals of its own face. */
export function surfaceOf(solid: Solid, facets: number): BufferGeometry {
  const { positions, triangles } = meshOf(solid, facets);
  const shared = new BufferGeometry();
  shared.setAttribute('position', new BufferAttribute(new Float32Array(positions), 3));
  shared.setIndex([...triangles]);
  if (solid.curvedSurfaces.length > 0) return toCreasedNormals(shared, CREASE_RAD);
  const surface = shared.toNonIndexed();
  surface.computeVertexNormals();
  return surface;
}

/** rad. Facets that meet at less are one curved surface. */
const CREASE_RAD = 0.5;
