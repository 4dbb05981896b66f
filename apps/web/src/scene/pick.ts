// What a line of sight meets first: a piece or the table. mm, frame of the table.

import type { Vec3 } from '@cairnmark/geometry';
import { add3, scale3 } from '@cairnmark/geometry';
import type { Mesh } from 'three';
import { Raycaster, Vector3 } from 'three';
import type { Ray } from './camera.ts';

export interface Picked {
  /** `index` of the piece; null for the table. */
  readonly piece: number | null;
  readonly point: Vec3;
  /** Height of that point. */
  readonly surfaceMm: number;
}

/** null where it meets neither: one looks level, past everything. */
export function pickAlong({ origin, direction }: Ray, surfaces: ReadonlyMap<Mesh, number>): Picked | null {
  const caster = new Raycaster(new Vector3(...origin), new Vector3(...direction));
  caster.firstHitOnly = true;
  const [hit] = caster.intersectObjects([...surfaces.keys()], false);
  for (const [surface, piece] of surfaces) {
    if (hit?.object === surface) return { piece, point: hit.point.toArray(), surfaceMm: hit.point.z };
  }
  if (direction[2] > -LEAST_SLANT) return null;
  const [x, y] = add3(origin, scale3(direction, -origin[2] / direction[2]));
  return { piece: null, point: [x, y, 0], surfaceMm: 0 };
}

/** No unit: sine of the slant below which the table is not seen. */
const LEAST_SLANT = 1e-3;
