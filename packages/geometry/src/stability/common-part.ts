// The common part of two convex figures of one plane, each a polygon (counter-clockwise), a segment or a point, in mm.
// Polygons and segments are cut by the sides of the other, one after another (Sutherland and Hodgman 1974).

import type { Vec2 } from '../kernel/vec.ts';
import { add2, cross2, dot2, length2, scale2, sub2 } from '../kernel/vec.ts';

/**
 * Corners of the common part. The caller knows that the figures touch; where rounding or a curved side leaves nothing
 * in common, the middle of the shortest line between a point of `a` and a point of `b` stands for it.
 */
export function commonPart(a: readonly Vec2[], b: readonly Vec2[]): readonly Vec2[] {
  const shared = b.length > 2 ? cutBy(a, b) : a.length > 2 ? cutBy(b, a) : thinPart(a, b);
  return shared.length > 0 ? shared : [between(a, b)];
}

function cutBy(figure: readonly Vec2[], polygon: readonly Vec2[]): readonly Vec2[] {
  return polygon.reduce((left: readonly Vec2[], from, i) => {
    const to = polygon[(i + 1) % polygon.length] ?? from;
    return leftOf(left, from, to);
  }, figure);
}

/** What of the figure lies left of the line from `from` to `to`. */
function leftOf(figure: readonly Vec2[], from: Vec2, to: Vec2): readonly Vec2[] {
  const along = sub2(to, from);
  const side = (p: Vec2): number => cross2(along, sub2(p, from));
  const kept: Vec2[] = [];
  figure.forEach((corner, i) => {
    const next = figure[(i + 1) % figure.length] ?? corner;
    const [here, there] = [side(corner), side(next)];
    if (here >= 0) kept.push(corner);
    const isOpenEnd = figure.length === 2 && i === 1;
    if (!isOpenEnd && here * there < 0) kept.push(add2(corner, scale2(sub2(next, corner), here / (here - there))));
  });
  return kept;
}

/** Two segments (or points): their crossing, or the piece of one line that they share. */
function thinPart(a: readonly Vec2[], b: readonly Vec2[]): readonly Vec2[] {
  const [a0, a1] = a;
  const [b0, b1] = b;
  if (a0 === undefined || b0 === undefined) return [];
  if (a1 === undefined) return [a0];
  if (b1 === undefined) return [b0];
  const [along, other] = [sub2(a1, a0), sub2(b1, b0)];
  const turn = cross2(along, other);
  if (Math.abs(turn) > PARALLEL * length2(along) * length2(other)) {
    const share = cross2(sub2(b0, a0), other) / turn;
    return [add2(a0, scale2(along, Math.min(1, Math.max(0, share))))];
  }
  const place = (p: Vec2): number => Math.min(1, Math.max(0, dot2(sub2(p, a0), along) / dot2(along, along)));
  const [from, to] = [place(b0), place(b1)].sort((p, q) => p - q);
  if (from === undefined || to === undefined) return [];
  const ends: readonly Vec2[] = [add2(a0, scale2(along, from)), add2(a0, scale2(along, to))];
  return from === to ? ends.slice(0, 1) : ends;
}

/** rad. Two lines of contact nearer to parallel than this share a stretch instead of crossing (as far as 0.1 mm over 100). */
const PARALLEL = 1e-3;

function between(a: readonly Vec2[], b: readonly Vec2[]): Vec2 {
  let best: Vec2 = a[0] ?? b[0] ?? [0, 0];
  let nearest = Number.POSITIVE_INFINITY;
  for (const p of a) {
    for (const q of b) {
      const apart = length2(sub2(p, q));
      if (apart >= nearest) continue;
      nearest = apart;
      best = scale2(add2(p, q), 0.5);
    }
  }
  return best;
}
