// The convex hull of points of the plane, in mm: the string drawn tight around them.
// Method: monotone chain (Andrew 1979) for the hull, then one walk round it that drops corners which are only noise.

import type { Vec2 } from './vec.ts';
import { cross2, length2, sub2 } from './vec.ts';

/**
 * The corners of the hull of `points`, counter-clockwise. A corner that lies within `noiseMm` of the line through its
 * neighbours is left out, so doubled points and points along a side never show. Fewer than three corners come back
 * when all points lie on one line, none when there are no points.
 */
export function convexHull(points: readonly Vec2[], noiseMm: number): readonly Vec2[] {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const below = chain(sorted);
  const above = chain(sorted.reverse());
  return withoutNoise([...below, ...above], noiseMm);
}

/** Half a hull without its last point: the turns to the left along points sorted by x. */
function chain(sorted: readonly Vec2[]): readonly Vec2[] {
  const kept: Vec2[] = [];
  for (const point of sorted) {
    while (turnsLeft(kept.at(-2), kept.at(-1), point) === false) kept.pop();
    kept.push(point);
  }
  return kept.slice(0, -1);
}

/** Null when there are not yet three points to tell a turn by. */
function turnsLeft(a: Vec2 | undefined, b: Vec2 | undefined, c: Vec2): boolean | null {
  if (a === undefined || b === undefined) return null;
  return cross2(sub2(b, a), sub2(c, a)) > 0;
}

function withoutNoise(ring: readonly Vec2[], noiseMm: number): readonly Vec2[] {
  const kept: Vec2[] = [];
  ring.forEach((corner, i) => {
    const before = kept.at(-1) ?? ring.at(-1) ?? corner;
    const next = ring[i + 1] ?? kept[0] ?? corner;
    if (distanceToLine(corner, before, next) > noiseMm) kept.push(corner);
  });
  return kept;
}

/** From `p` to the line through `a` and `b`, mm; to the point `a` when the two are one. */
function distanceToLine(p: Vec2, a: Vec2, b: Vec2): number {
  const along = sub2(b, a);
  const length = length2(along);
  const across = sub2(p, a);
  return length > 0 ? Math.abs(cross2(along, across)) / length : length2(across);
}
