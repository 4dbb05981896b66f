// Bright paper spreads over ink in a picture: blur mixes light, and the picture's scale of brightness makes the middle of a mixed edge
// lie on the dark side. All edges of a marker move inwards alike, by a part of a pixel.

import type { Vec2 } from '@cairnmark/geometry';
import type { Quad } from '../find/quadrilateral.ts';

/** The quadrilateral (clockwise as seen, y down) with every side moved inwards by `byPx`. */
export function shiftedQuad(quad: Quad, byPx: number): Quad {
  const lines = quad.map((from, k) => inwardLine(from, quad[(k + 1) % 4] ?? from, byPx));
  const corner = (k: number): Vec2 => {
    const [before, after] = [lines[(k + 3) % 4], lines[k]];
    if (before === undefined || after === undefined) return [Number.NaN, Number.NaN];
    const whole = before.a * after.b - after.a * before.b;
    return [(before.c * after.b - after.c * before.b) / whole, (before.a * after.c - after.a * before.c) / whole];
  };
  return [corner(0), corner(1), corner(2), corner(3)];
}

/** The line a x + b y = c. Walking on along a side of a clockwise figure, as seen, the inside is to the right. */
function inwardLine(from: Vec2, to: Vec2, byPx: number): { a: number; b: number; c: number } {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.hypot(dx, dy);
  const [a, b] = [-dy / length, dx / length];
  return { a, b, c: a * from[0] + b * from[1] + byPx };
}
