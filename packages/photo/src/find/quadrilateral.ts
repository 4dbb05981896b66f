// Whether a border is that of a quadrilateral, and of which: the hull of its points, less the corners that matter least until four are
// left, and these moved to where they hold most. Source of the order of leaving out: Visvalingam and Whyatt, Line generalisation by repeated elimination of points, 1993.

import type { Vec2 } from '@cairnmark/geometry';
import { convexHull } from '@cairnmark/geometry';
import type { Border } from '../image/borders.ts';

/** Corners clockwise as seen in the picture, pixels. */
export type Quad = readonly [Vec2, Vec2, Vec2, Vec2];

/**
 * The quadrilateral within `slackPx` of a share `least` of the points of the border; null when there is none, or one of its sides
 * is below `leastSidePx`.
 */
export function quadrilateralOf(border: Border, slackPx: number, leastSidePx: number, least: number): Quad | null {
  const points = Array.from(
    { length: border.length / 2 },
    (_, k): Vec2 => [border[2 * k] ?? 0, border[2 * k + 1] ?? 0],
  );
  // With y down, what the hull calls counter-clockwise is clockwise as seen.
  const hull = convexHull(points, HULL_NOISE_PX);
  const [a, b, c, d] = widened(fourOf(hull), hull);
  if (!(a && b && c && d)) return null;
  const quad: Quad = [a, b, c, d];
  if (sidesOf(quad).some(([from, to]) => Math.hypot(to[0] - from[0], to[1] - from[1]) < leastSidePx)) return null;
  return turnsClockwise(quad) && staysWithin(border, quad, slackPx, least) ? quad : null;
}

/** px. Steps from pixel to pixel along a slanted line are no corners. */
const HULL_NOISE_PX = 0.4;

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

/** Leaves out the corner that takes the least area with it, again and again. */
function fourOf(hull: readonly Vec2[]): readonly Vec2[] {
  const left = [...hull];
  const lossAt = (k: number): number => {
    const [before, here, next] = [left.at(k - 1), left[k], left[(k + 1) % left.length]];
    return before && here && next ? Math.abs(turn(before, here, next)) : 0;
  };
  while (left.length > 4) {
    let least = 0;
    for (let k = 1; k < left.length; k += 1) if (lossAt(k) < lossAt(least)) least = k;
    left.splice(least, 1);
  }
  return left;
}

/** Moves each corner to the point of the hull that gives the largest area, others kept, until none moves. */
function widened(four: readonly Vec2[], hull: readonly Vec2[]): readonly Vec2[] {
  const quad = [...four];
  for (let round = 0, moved = true; moved && round < MOST_ROUNDS; round += 1) {
    moved = false;
    for (let k = 0; k < quad.length; k += 1) {
      const [before, here, next] = [quad.at(k - 1), quad[k], quad[(k + 1) % quad.length]];
      if (!(before && here && next)) continue;
      let [best, area] = [here, turn(before, here, next)];
      for (const point of hull) {
        const wider = turn(before, point, next);
        if (wider > area) [best, area] = [point, wider];
      }
      moved ||= best !== here;
      quad[k] = best;
    }
  }
  return quad;
}

const MOST_ROUNDS = 8;

function staysWithin(border: Border, quad: Quad, slackPx: number, least: number): boolean {
  let stray = ((1 - least) * border.length) / 2;
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
    if (nearest > slackPx) stray -= 1;
    if (stray < 0) return false;
  }
  return true;
}
