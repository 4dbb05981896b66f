// The area common to two convex outlines, exact on true arcs: over what area two faces touch; mm2.
// Polygons by clipping; discs by the two circular segments of their lens (Weisstein, "Circle-Circle Intersection"); a
// polygon and a disc by the triangles and sectors that the sides of the polygon span at the centre.

import type { DiscOutline, Outline, PolygonOutline } from '../kernel/outline.ts';
import { clipConvex, signedAreaMm2 } from '../kernel/polygon.ts';
import type { Vec2 } from '../kernel/vec.ts';
import { cross2, dot2, length2, sub2 } from '../kernel/vec.ts';

/** The area common to two convex outlines, polygons counter-clockwise; mm2. */
export function overlapAreaMm2(a: Outline, b: Outline): number {
  if (a.kind === 'polygon') {
    return b.kind === 'polygon' ? Math.max(0, signedAreaMm2(clipConvex(a.points, b.points))) : polygonAndDisc(a, b);
  }
  return b.kind === 'polygon' ? polygonAndDisc(b, a) : lens(a, b);
}

/**
 * Two segments on the common chord. Half their angles come from the law of cosines in factored form:
 * tan^2(a/2) = (r + R - d)(r - R + d) / (d + R - r)(d + R + r), which keeps its digits where discs barely meet.
 */
function lens({ centre: a, radiusMm: rA }: DiscOutline, { centre: b, radiusMm: rB }: DiscOutline): number {
  const apart = length2(sub2(b, a));
  const overlap = rA + rB - apart;
  const [beyondA, beyondB] = [apart - (rA - rB), apart + (rA - rB)];
  if (overlap <= 0) return 0;
  if (beyondA <= 0 || beyondB <= 0) return Math.PI * Math.min(rA, rB) ** 2;
  const whole = rA + rB + apart;
  const halfA = 2 * Math.atan2(Math.sqrt(overlap * beyondA), Math.sqrt(beyondB * whole));
  const halfB = 2 * Math.atan2(Math.sqrt(overlap * beyondB), Math.sqrt(beyondA * whole));
  return rA ** 2 * segment(halfA) + rB ** 2 * segment(halfB);
}

/** A segment of the unit circle, by half its angle h: h - sin h cos h; as a series where the two terms nearly cancel. */
function segment(halfRad: number): number {
  if (halfRad > 0.1) return halfRad - Math.sin(halfRad) * Math.cos(halfRad);
  const sq = (2 * halfRad) ** 2;
  return ((2 * halfRad) ** 3 / 12) * (1 - (sq / 20) * (1 - (sq / 42) * (1 - (sq / 72) * (1 - sq / 110))));
}

/** Each side of the polygon spans a figure at the centre of the disc: triangles where it is inside, sectors outside. */
function polygonAndDisc({ points }: PolygonOutline, { centre, radiusMm }: DiscOutline): number {
  let areaMm2 = 0;
  let before = points.at(-1);
  for (const corner of points) {
    if (before !== undefined) areaMm2 += spanned(sub2(before, centre), sub2(corner, centre), radiusMm);
    before = corner;
  }
  return Math.max(0, areaMm2);
}

/** The signed area common to the triangle (0, a, b) and the disc of radius `radiusMm` about 0. */
function spanned(a: Vec2, b: Vec2, radiusMm: number): number {
  const along = sub2(b, a);
  const lengthMm = length2(along);
  if (lengthMm === 0) return 0;
  const off = cross2(along, a) / lengthMm;
  const foot = -dot2(along, a) / lengthMm;
  if (Math.abs(off) >= radiusMm) return sector(a, b, radiusMm);
  const half = Math.sqrt((radiusMm - off) * (radiusMm + off));
  const place = (at: number): Vec2 => {
    // Ends as they are: seen from near the centre, their rounding would be a large angle.
    if (at <= 0) return a;
    if (at >= lengthMm) return b;
    return [a[0] + (along[0] / lengthMm) * at, a[1] + (along[1] / lengthMm) * at];
  };
  const [enters, leaves] = [place(foot - half), place(foot + half)];
  return sector(a, enters, radiusMm) + cross2(enters, leaves) / 2 + sector(leaves, b, radiusMm);
}

function sector(a: Vec2, b: Vec2, radiusMm: number): number {
  return (radiusMm ** 2 * Math.atan2(cross2(a, b), dot2(a, b))) / 2;
}
