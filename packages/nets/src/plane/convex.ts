// Convex figures on the sheet: whether two overlap, whether one lies in another. Rings of corners, counter-clockwise, mm.
// Method: two convex figures are apart when the line along a side of one of them parts them (separating axes).

import type { Vec2 } from '@cairnmark/geometry';
import { length2, sub2 } from '@cairnmark/geometry';
import { TOUCH_RELATIVE } from '../tolerance.ts';

/** A figure with the box around it, so that figures far apart are told quickly. */
export interface Figure {
  readonly ring: readonly Vec2[];
  readonly min: Vec2;
  readonly max: Vec2;
}

export function figureOf(ring: readonly Vec2[]): Figure {
  let [left, low, right, high] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of ring) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    low = Math.min(low, y);
    high = Math.max(high, y);
  }
  return { ring, min: [left, low], max: [right, high] };
}

/** True when the insides have points in common; figures that only touch do not overlap. */
export function overlaps(a: Figure, b: Figure): boolean {
  const boxesApart = a.min[0] >= b.max[0] || b.min[0] >= a.max[0] || a.min[1] >= b.max[1] || b.min[1] >= a.max[1];
  return !boxesApart && !parted(a, b) && !parted(b, a);
}

/** True when no corner of `inner` lies outside `outer`. */
export function liesIn(inner: Figure, outer: Figure): boolean {
  const touchMm = TOUCH_RELATIVE * sizeOf(outer);
  return sidesOf(outer.ring).every(([from, to]) => inner.ring.every((corner) => leftOf(from, to, corner) >= -touchMm));
}

/** How far a point lies to the left of the line from `from` to `to`, mm; negative on its right. */
export function leftOf(from: Vec2, to: Vec2, point: Vec2): number {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  return (dx * (point[1] - from[1]) - dy * (point[0] - from[0])) / Math.hypot(dx, dy);
}

/** Each corner of a ring with the next. */
export const sidesOf = (ring: readonly Vec2[]): readonly (readonly [Vec2, Vec2])[] =>
  ring.map((corner, k) => [corner, ring[k + 1] ?? ring[0] ?? corner]);

/** True when a side of `a` has all of `b` on its outer side. */
function parted(a: Figure, b: Figure): boolean {
  const touchMm = TOUCH_RELATIVE * (sizeOf(a) + sizeOf(b));
  return sidesOf(a.ring).some(([from, to]) => b.ring.every((corner) => leftOf(from, to, corner) <= touchMm));
}

const sizeOf = ({ min, max }: Figure): number => length2(sub2(max, min));
