// The outline of a body as it is seen in a parallel view, as a ring of points of the body itself. mm.

import type { Vec3 } from '../kernel/vec.ts';
import { add3, cross3, length3, scale3, sub3, unit3 } from '../kernel/vec.ts';
import type { Body } from '../solids/body.ts';
import { supportPoint } from '../solids/body.ts';
import type { FlatFace } from '../solids/types.ts';

/** Three unit vectors in the frame of the table, square to each other: how somebody looks at it. */
export interface Basis {
  readonly right: Vec3;
  readonly up: Vec3;
  readonly away: Vec3;
}

/** Directions looked along: the drawn rim of a ball stays within a thousandth of its radius. */
const DIRECTIONS = 96;

/** mm. Points nearer than this are drawn as one. */
const SAME_POINT_MM = 1e-6;

/** Counter-clockwise as seen. Of a flat-faced body the points are corners. */
export function silhouetteOf(body: Body, { right, up }: Basis): readonly Vec3[] {
  const ring: Vec3[] = [];
  for (let k = 0; k < DIRECTIONS; k += 1) {
    // Half a step on, so that no direction is square to a side that stands upright or level in the view.
    const angleRad = ((k + 0.5) * 2 * Math.PI) / DIRECTIONS;
    const point = supportPoint(body, add3(scale3(right, Math.cos(angleRad)), scale3(up, Math.sin(angleRad))));
    const before = ring.at(-1);
    if (before === undefined || !isSame(before, point)) ring.push(point);
  }
  const [first, last] = [ring[0], ring.at(-1)];
  if (ring.length > 1 && first !== undefined && last !== undefined && isSame(first, last)) ring.pop();
  return ring;
}

/** The rim of a flat face, counter-clockwise seen from outside; that of a disc as a polygon. */
export function rimOf(face: FlatFace): readonly Vec3[] {
  if (face.kind === 'polygon') return face.corners;
  const { centre, normal, radiusMm } = face;
  const first = unit3(cross3(normal, Math.abs(normal[0]) < 0.9 ? [1, 0, 0] : [0, 1, 0]));
  const second = cross3(normal, first);
  return Array.from({ length: DIRECTIONS }, (_, k) => {
    const angleRad = (k * 2 * Math.PI) / DIRECTIONS;
    const out = add3(scale3(first, Math.cos(angleRad)), scale3(second, Math.sin(angleRad)));
    return add3(centre, scale3(out, radiusMm));
  });
}

const isSame = (a: Vec3, b: Vec3): boolean => length3(sub3(a, b)) <= SAME_POINT_MM;
