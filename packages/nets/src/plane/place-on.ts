// How a flat figure is turned to have most room on a page. mm, rad.
// Method: turned by t, the hull reaches W(t) across and H(t) = W(t + 90 degrees) up. Between the turns at which one of its
// sides comes to lie along a side of the page both are arcs of sine waves, so the least of w / W and h / H is greatest
// at such a turn, or where the two are the same in between.

import type { Vec2 } from '@cairnmark/geometry';
import { convexHull } from '@cairnmark/geometry';
import { TOUCH_RELATIVE } from '../tolerance.ts';
import { sidesOf } from './convex.ts';

export interface Turned {
  readonly turnRad: number;
  /** By so much the turned figure could grow on a page of that size; below 1 it does not fit. */
  readonly scale: number;
  /** Its left and lower ends, turned. */
  readonly min: Vec2;
  readonly sizeMm: Vec2;
}

/** The best turn of the figure with these corners on a page. */
export function placeOn(corners: readonly Vec2[], widthMm: number, heightMm: number): Turned {
  const reach = Math.max(...corners.map(([x, y]) => Math.hypot(x, y)));
  const hull = convexHull(corners, TOUCH_RELATIVE * reach);
  const at = (turnRad: number): Turned => turnedBy(hull, turnRad, widthMm, heightMm);
  const turns = sideTurns(hull);
  const tried = turns.map(at);
  const between = tried.flatMap((here, k) => {
    const next = tried[k + 1] ?? at(Math.PI);
    return crossing(here, next, widthMm, heightMm, at);
  });
  return [...tried, ...between].reduce((best, one) => (one.scale > best.scale * (1 + TOUCH_RELATIVE) ? one : best));
}

/** The figure turned by `turnRad`. */
export function turnedBy(corners: readonly Vec2[], turnRad: number, widthMm: number, heightMm: number): Turned {
  const [cos, sin] = [Math.cos(turnRad), Math.sin(turnRad)];
  let [left, low, right, high] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of corners) {
    const [across, up] = [cos * x - sin * y, sin * x + cos * y];
    left = Math.min(left, across);
    right = Math.max(right, across);
    low = Math.min(low, up);
    high = Math.max(high, up);
  }
  const sizeMm: Vec2 = [right - left, high - low];
  return { turnRad, scale: Math.min(widthMm / sizeMm[0], heightMm / sizeMm[1]), min: [left, low], sizeMm };
}

/** The turns in [0, pi) at which a side of the hull is level or upright, upwards; 0 is among them. */
function sideTurns(hull: readonly Vec2[]): readonly number[] {
  const quarter = Math.PI / 2;
  const turns = sidesOf(hull).map(([a, b]) => {
    const direction = Math.atan2(b[1] - a[1], b[0] - a[0]);
    return ((-direction % quarter) + quarter) % quarter;
  });
  const first = [0, ...turns]
    .sort((a, b) => a - b)
    .filter((turn, k, all) => k === 0 || turn - (all[k - 1] ?? 0) > 1e-12);
  return [...first, ...first.map((turn) => turn + quarter)];
}

/** Between two turns: where width and height fill the page alike. */
function crossing(
  from: Turned,
  to: Turned,
  widthMm: number,
  heightMm: number,
  at: (turnRad: number) => Turned,
): readonly Turned[] {
  const excess = ({ sizeMm }: Turned): number => sizeMm[0] * heightMm - sizeMm[1] * widthMm;
  const rises = excess(to) > excess(from);
  if (excess(from) * excess(to) >= 0) return [];
  let [low, high] = [from.turnRad, to.turnRad <= from.turnRad ? Math.PI : to.turnRad];
  for (let k = 0; k < HALVINGS; k += 1) {
    const middle = (low + high) / 2;
    if (excess(at(middle)) > 0 === rises) high = middle;
    else low = middle;
  }
  return [at(low)];
}

/** A quarter turn halved so often is 1e-13 rad. */
const HALVINGS = 44;
