// Whether a border is that of a quadrilateral, and of which. Over a convex figure the point furthest from any point, and the
// point furthest from any line, is a corner; so four such points are the corners, if there are four.

import type { Vec2 } from '@cairnmark/geometry';
import type { Border } from '../image/borders.ts';

/** Corners clockwise as seen in the picture, pixels. */
export type Quad = readonly [Vec2, Vec2, Vec2, Vec2];

/** The quadrilateral within `slackPx` of every point of the border; null when there is none, or one of its sides is below `leastSidePx`. */
export function quadrilateralOf(border: Border, slackPx: number, leastSidePx: number): Quad | null {
  const first = furthestFrom(border, middleOf(border));
  const opposite = furthestFrom(border, first);
  const [left, right] = furthestFromLine(border, first, opposite);
  const quad: Quad = [first, left, opposite, right];
  if (sidesOf(quad).some(([from, to]) => Math.hypot(to[0] - from[0], to[1] - from[1]) < leastSidePx)) return null;
  if (!turnsClockwise(quad)) return null;
  return staysWithin(border, quad, slackPx) ? quad : null;
}

export const sidesOf = ([a, b, c, d]: Quad): readonly (readonly [from: Vec2, to: Vec2])[] => [
  [a, b],
  [b, c],
  [c, d],
  [d, a],
];

/** Convex and clockwise as seen (y down). */
export function turnsClockwise([a, b, c, d]: Quad): boolean {
  return turn(a, b, c) > 0 && turn(b, c, d) > 0 && turn(c, d, a) > 0 && turn(d, a, b) > 0;
}

/** Positive when `c` lies to the right, as seen (y down), of the way from `a` to `b`. */
const turn = (a: Vec2, b: Vec2, c: Vec2): number => (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

function middleOf(border: Border): Vec2 {
  let [x, y] = [0, 0];
  for (let k = 0; k < border.length; k += 2) {
    x += border[k] ?? 0;
    y += border[k + 1] ?? 0;
  }
  return [(2 * x) / border.length, (2 * y) / border.length];
}

function furthestFrom(border: Border, [x, y]: Vec2): Vec2 {
  let [best, furthest] = [0, -1];
  for (let k = 0; k < border.length; k += 2) {
    const [dx, dy] = [(border[k] ?? 0) - x, (border[k + 1] ?? 0) - y];
    const distance = dx * dx + dy * dy;
    if (distance > furthest) [best, furthest] = [k, distance];
  }
  return [border[best] ?? 0, border[best + 1] ?? 0];
}

/** The points furthest to the left and to the right of the line from `a` to `b`, walking along it as seen. */
function furthestFromLine(border: Border, a: Vec2, b: Vec2): readonly [left: Vec2, right: Vec2] {
  let [left, right, most, least] = [0, 0, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (let k = 0; k < border.length; k += 2) {
    const side = turn(a, b, [border[k] ?? 0, border[k + 1] ?? 0]);
    if (side < least) [left, least] = [k, side];
    if (side > most) [right, most] = [k, side];
  }
  const at = (k: number): Vec2 => [border[k] ?? 0, border[k + 1] ?? 0];
  return [at(left), at(right)];
}

function staysWithin(border: Border, quad: Quad, slackPx: number): boolean {
  const sides = sidesOf(quad).map(([from, to]) => {
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    return { from, x: (to[0] - from[0]) / length, y: (to[1] - from[1]) / length };
  });
  for (let k = 0; k < border.length; k += 2) {
    let nearest = Number.POSITIVE_INFINITY;
    for (const { from, x, y } of sides) {
      const across = x * ((border[k + 1] ?? 0) - from[1]) - y * ((border[k] ?? 0) - from[0]);
      nearest = Math.min(nearest, Math.abs(across));
    }
    if (nearest > slackPx) return false;
  }
  return true;
}
