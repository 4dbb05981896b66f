// Areas, lengths and clipping of polygons in the plane. Rings are corners in order, the last joined to the first; mm.
// Areas by the shoelace formula (Meister 1769), clipping by half-planes one after another (Sutherland and Hodgman 1974).

import type { Vec2 } from './vec.ts';
import { cross2, sub2 } from './vec.ts';

/** The area inside a ring, mm2: positive when it runs counter-clockwise, negative when clockwise. */
export function signedAreaMm2(ring: readonly Vec2[]): number {
  const [first] = ring;
  if (first === undefined) return 0;
  let twiceMm2 = 0;
  let beforeX = 0;
  let beforeY = 0;
  for (const corner of ring) {
    const x = corner[0] - first[0];
    const y = corner[1] - first[1];
    twiceMm2 += beforeX * y - beforeY * x;
    beforeX = x;
    beforeY = y;
  }
  return twiceMm2 / 2;
}

/** The way round a ring, mm. */
export function ringLengthMm(ring: readonly Vec2[]): number {
  let lengthMm = 0;
  let before = ring.at(-1);
  for (const corner of ring) {
    if (before !== undefined) {
      const dx = corner[0] - before[0];
      const dy = corner[1] - before[1];
      lengthMm += Math.sqrt(dx * dx + dy * dy);
    }
    before = corner;
  }
  return lengthMm;
}

/** The part of a convex ring that lies inside another; both counter-clockwise. No corners when they are apart. */
export function clipConvex(ring: readonly Vec2[], by: readonly Vec2[]): readonly Vec2[] {
  return by.reduce((rest: readonly Vec2[], corner, i) => keepLeft(rest, corner, by[i + 1] ?? by[0] ?? corner), ring);
}

/** The part of a convex ring to the left of the line from `a` to `b`. */
function keepLeft(ring: readonly Vec2[], a: Vec2, b: Vec2): readonly Vec2[] {
  const along = sub2(b, a);
  const kept: Vec2[] = [];
  let before = ring.at(-1);
  for (const corner of ring) {
    if (before !== undefined) {
      const [left, leftNow] = [cross2(along, sub2(before, a)), cross2(along, sub2(corner, a))];
      if (left * leftNow < 0) kept.push(between(before, corner, left / (left - leftNow)));
      if (leftNow >= 0) kept.push(corner);
    }
    before = corner;
  }
  return kept;
}

const between = (a: Vec2, b: Vec2, share: number): Vec2 => [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share];
