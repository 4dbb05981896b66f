// How deep the shadows of two pieces overlap, seen from above, in mm. Outlines are convex polygons or discs.
// Source: the penetration depth of two convex figures is the distance from the origin to the boundary of their
// Minkowski difference; for polygons the nearest boundary lies along a normal of an edge of one of them.

import type { DiscOutline, Outline, PolygonOutline } from '../kernel/outline.ts';
import type { Vec2 } from '../kernel/vec.ts';
import { cross2, dot2, length2, scale2, sub2 } from '../kernel/vec.ts';

/**
 * The shortest way, in the plane, by which one shadow has to move until the two only touch. Zero when they touch,
 * negative when they are apart (then its size is at most the gap between them, and equal to it for two discs).
 */
export function planOverlapDepth(upper: Outline, lower: Outline): number {
  if (upper.kind === 'disc') {
    return lower.kind === 'disc' ? discsDepth(upper, lower) : discPolygonDepth(upper, lower);
  }
  if (lower.kind === 'disc') return discPolygonDepth(lower, upper);
  return Math.min(leastDepthOverEdges(upper, lower), leastDepthOverEdges(lower, upper));
}

const discsDepth = (a: DiscOutline, b: DiscOutline): number =>
  a.radiusMm + b.radiusMm - length2(sub2(a.centre, b.centre));

/** Radius plus the signed distance of the disc's centre from the nearest edge, counted positive inside. */
function discPolygonDepth(disc: DiscOutline, polygon: PolygonOutline): number {
  let nearest = Number.POSITIVE_INFINITY;
  let inside = true;
  for (const [from, to] of edges(polygon)) {
    nearest = Math.min(nearest, distanceToSegment(disc.centre, from, to));
    if (cross2(sub2(to, from), sub2(disc.centre, from)) < 0) inside = false;
  }
  return inside ? disc.radiusMm + nearest : disc.radiusMm - nearest;
}

function distanceToSegment(point: Vec2, from: Vec2, to: Vec2): number {
  const along = sub2(to, from);
  const fromStart = sub2(point, from);
  const share = Math.min(1, Math.max(0, dot2(fromStart, along) / dot2(along, along)));
  return length2(sub2(fromStart, scale2(along, share)));
}

/**
 * The least depth over the outward edge normals of `polygon`. The point of `other` that lies deepest behind an edge moves
 * round with the edges, so both are walked round once.
 */
function leastDepthOverEdges(polygon: PolygonOutline, other: PolygonOutline): number {
  const count = other.points.length;
  let least = Number.POSITIVE_INFINITY;
  let deepest = -1;
  for (const [from, to] of edges(polygon)) {
    const along = sub2(to, from);
    const depthOf = (index: number): number => cross2(along, sub2(pointAt(other, index), from));
    if (deepest < 0) deepest = deepestOf(count, depthOf);
    for (let steps = 0; steps < count && depthOf(deepest + 1) > depthOf(deepest); steps++) deepest++;
    least = Math.min(least, depthOf(deepest) / length2(along));
  }
  return least;
}

function deepestOf(count: number, depthOf: (index: number) => number): number {
  let deepest = 0;
  for (let index = 1; index < count; index++) if (depthOf(index) > depthOf(deepest)) deepest = index;
  return deepest;
}

function pointAt({ points }: PolygonOutline, index: number): Vec2 {
  const point = points[index % points.length];
  if (point === undefined) throw new RangeError('a polygon without points has no shadow');
  return point;
}

/** The edges in order, without those of no length. */
function* edges({ points }: PolygonOutline): Generator<readonly [from: Vec2, to: Vec2]> {
  let from = points[points.length - 1];
  for (const to of points) {
    if (from !== undefined && (from[0] !== to[0] || from[1] !== to[1])) yield [from, to];
    from = to;
  }
}
