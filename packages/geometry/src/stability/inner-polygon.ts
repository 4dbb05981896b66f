// The polygon spanned by pushes that are known to be borne: all that lies inside it is borne too. In shares of gravity.

import { convexHull } from '../kernel/hull.ts';
import type { Vec2 } from '../kernel/vec.ts';
import { dot2, length2, sub2 } from '../kernel/vec.ts';

export interface Side {
  /** Outward unit normal. */
  readonly normal: Vec2;
  /** How far along the normal the side lies from no push; negative when it leaves no push outside. */
  readonly distance: number;
  /** False when the pushes lie on one line. */
  readonly ofPolygon: boolean;
}

/** No unit (a share of gravity). Pushes this near to each other, or to a line, are one. */
const SAME_PUSH = 1e-10;

/** The side nearest to no push at all. */
export function nearestSide(borne: readonly Vec2[]): Side {
  const hull = convexHull(borne, SAME_PUSH);
  const corners = hull.length > 0 ? hull : borne.slice(0, 1);
  const ofPolygon = corners.length > 2;
  const sides = corners.map((from, i): Side => {
    const along = sub2(corners[(i + 1) % corners.length] ?? from, from);
    const length = length2(along);
    const normal: Vec2 = length === 0 ? [1, 0] : [along[1] / length, -along[0] / length];
    return { normal, distance: dot2(normal, from), ofPolygon };
  });
  return sides.reduce((best, side) => (side.distance < best.distance ? side : best), NO_SIDE);
}

const NO_SIDE: Side = { normal: [1, 0], distance: Number.POSITIVE_INFINITY, ofPolygon: false };
