// How far two polygons are apart, side by side by side: the slow, obvious way. mm.

import type { Vec2 } from '@cairnmark/geometry';

type Ring = readonly Vec2[];

/** 0 where they meet, or where one lies in the other. */
export function apartMm(a: Ring, b: Ring): number {
  if (holds(a, b[0]!) || holds(b, a[0]!)) return 0;
  let least = Number.POSITIVE_INFINITY;
  for (const [a0, a1] of sidesOf(a)) {
    for (const [b0, b1] of sidesOf(b)) {
      if (cross(a0, a1, b0, b1)) return 0;
      const ends = [toSide(a0, b0, b1), toSide(a1, b0, b1), toSide(b0, a0, a1), toSide(b1, a0, a1)];
      least = Math.min(least, ...ends);
    }
  }
  return least;
}

export const turned = (ring: Ring, turnRad: number, [dx, dy]: Vec2): Ring =>
  ring.map(([x, y]) => [
    Math.cos(turnRad) * x - Math.sin(turnRad) * y + dx,
    Math.sin(turnRad) * x + Math.cos(turnRad) * y + dy,
  ]);

const sidesOf = (ring: Ring): (readonly [Vec2, Vec2])[] => ring.map((from, k) => [from, ring[(k + 1) % ring.length]!]);

function toSide([x, y]: Vec2, [x0, y0]: Vec2, [x1, y1]: Vec2): number {
  const [dx, dy] = [x1 - x0, y1 - y0];
  const share = Math.min(1, Math.max(0, ((x - x0) * dx + (y - y0) * dy) / (dx * dx + dy * dy || 1)));
  return Math.hypot(x - x0 - share * dx, y - y0 - share * dy);
}

const side = ([x0, y0]: Vec2, [x1, y1]: Vec2, [x, y]: Vec2): number => (x1 - x0) * (y - y0) - (y1 - y0) * (x - x0);

const cross = (a0: Vec2, a1: Vec2, b0: Vec2, b1: Vec2): boolean =>
  side(a0, a1, b0) * side(a0, a1, b1) < 0 && side(b0, b1, a0) * side(b0, b1, a1) < 0;

function holds(ring: Ring, [x, y]: Vec2): boolean {
  const above = sidesOf(ring).filter(
    ([[x0, y0], [x1, y1]]) => y0 <= y !== y1 <= y && x0 + ((x1 - x0) * (y - y0)) / (y1 - y0) > x,
  );
  return above.length % 2 === 1;
}
