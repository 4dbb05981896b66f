// How far a piece has to go to one side of another until their true outlines just touch, seen from above: turned prisms,
// cylinders, anything convex. The depth of overlap falls all the way out of a convex figure, so halving finds its end. mm.

import type { Outline, Side, Vec2 } from '@cairnmark/geometry';
import { add2, planOverlapDepth, reachAlong } from '@cairnmark/geometry';
import { gridBeyond } from './grid.ts';
import { DIRECTIONS, pointAt, towards } from './sides.ts';

/**
 * Where the axis of a piece comes to stand along the axis of a side, when it touches `fixed` there with its axis on the line
 * through `from`, a point at which the two overlap: on the grid, at most a step away and never into it. `own`: its outline
 * about its axis.
 */
export function touchingAt(own: Outline, fixed: Outline, side: Side, from: Vec2): number {
  const { axis, sign } = DIRECTIONS[side];
  const farEndMm = reachAlong(fixed, towards(side)) - sign * from[axis];
  const clearMm = farEndMm + reachAlong(own, towards(OPPOSITE[side])) + 1;
  return lastOverlap(overlapOn(own, fixed, side, from), from[axis], from[axis] + sign * clearMm, sign);
}

/** The same, looked for within `withinMm` of `at` alone; null when it is not there. */
export function touchingNear(own: Outline, fixed: Outline, side: Side, at: Vec2, withinMm: number): number | null {
  const { axis, sign } = DIRECTIONS[side];
  const overlaps = overlapOn(own, fixed, side, at);
  const [inner, outer] = [at[axis] - sign * withinMm, at[axis] + sign * withinMm];
  return overlaps(inner) && !overlaps(outer) ? lastOverlap(overlaps, inner, outer, sign) : null;
}

/** Do the two overlap, with the axis of the first so far along the axis of the side, on the line through `at`? */
function overlapOn(own: Outline, fixed: Outline, side: Side, at: Vec2): (alongMm: number) => boolean {
  const { axis } = DIRECTIONS[side];
  const acrossMm = at[axis === 0 ? 1 : 0];
  return (alongMm) => planOverlapDepth(movedBy(own, pointAt(axis, alongMm, acrossMm)), fixed) > 0;
}

function lastOverlap(overlaps: (alongMm: number) => boolean, inner: number, outer: number, sign: 1 | -1): number {
  let [inside, outside] = [inner, outer];
  while (Math.abs(outside - inside) > FOUND_MM) {
    const middle = (inside + outside) / 2;
    if (overlaps(middle)) inside = middle;
    else outside = middle;
  }
  return gridBeyond(outside, sign);
}

function movedBy(outline: Outline, by: Vec2): Outline {
  return outline.kind === 'disc'
    ? { kind: 'disc', centre: add2(outline.centre, by), radiusMm: outline.radiusMm }
    : { kind: 'polygon', points: outline.points.map((point) => add2(point, by)) };
}

const OPPOSITE: Readonly<Record<Side, Side>> = { left: 'right', right: 'left', back: 'front', front: 'back' };

/** mm. How nearly the place of touching is found: far below the grid, far above rounding. */
const FOUND_MM = 1e-8;
