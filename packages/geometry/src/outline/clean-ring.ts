// Rings as they come, from traced photos too, made fit for the walk; mm.
// Doubled points and points along a side are left out; what is left is told convex or not.

import { signedAreaMm2 } from '../kernel/polygon.ts';
import type { Vec2 } from '../kernel/vec.ts';

/** A ring without points that lie within `noiseMm` of the one before or of the line between their neighbours. */
export function cleanRing(ring: readonly Vec2[], noiseMm: number): readonly Vec2[] {
  const kept: Vec2[] = [];
  for (const point of ring) {
    while (isIdle(kept.at(-2), kept.at(-1), point, noiseMm)) kept.pop();
    if (isApart(kept.at(-1), point, noiseMm)) kept.push(point);
  }
  trimSeam(kept, noiseMm);
  return kept;
}

/**
 * True when a cleaned ring runs once round a convex region, counter-clockwise. Turning left everywhere is not enough (a
 * five-pointed star does that): once round, a ring goes up once and down once.
 */
export function isConvexRing(ring: readonly Vec2[]): boolean {
  let before = ring.at(-2);
  let corner = ring.at(-1);
  let upsAndDowns = 0;
  let isRising = risesLast(ring);
  for (const after of ring) {
    if (before === undefined || corner === undefined || turnOf(before, corner, after) <= 0) return false;
    const rise = after[1] - corner[1];
    if (rise !== 0 && rise > 0 !== isRising) {
      upsAndDowns += 1;
      isRising = rise > 0;
    }
    before = corner;
    corner = after;
  }
  return upsAndDowns === 2;
}

/** The ring running counter-clockwise. */
export function counterClockwise(ring: readonly Vec2[]): readonly Vec2[] {
  return signedAreaMm2(ring) >= 0 ? ring : [...ring].reverse();
}

function isApart(a: Vec2 | undefined, b: Vec2, noiseMm: number): boolean {
  return a === undefined || distanceBetween(a, b) > noiseMm;
}

/** True when `corner` lies on the way from `before` to `after`: it does not turn, and it is no spike. */
function isIdle(before: Vec2 | undefined, corner: Vec2 | undefined, after: Vec2, noiseMm: number): boolean {
  if (before === undefined || corner === undefined) return false;
  const onward = (corner[0] - before[0]) * (after[0] - corner[0]) + (corner[1] - before[1]) * (after[1] - corner[1]);
  if (onward <= 0) return false;
  return Math.abs(turnOf(before, corner, after)) <= noiseMm * distanceBetween(before, after);
}

/** Many times as fast as Math.hypot, which guards against lengths beyond all outlines. */
function distanceBetween(a: Vec2, b: Vec2): number {
  const dx = b[0] - a[0];
  const dy = b[1] - a[1];
  return Math.sqrt(dx * dx + dy * dy);
}

/** Twice the area of the triangle: positive when the way from `before` over `corner` to `after` turns left. */
function turnOf(before: Vec2, corner: Vec2, after: Vec2): number {
  return (corner[0] - before[0]) * (after[1] - corner[1]) - (corner[1] - before[1]) * (after[0] - corner[0]);
}

/** Cleans where the end of the ring meets its start. */
function trimSeam(ring: Vec2[], noiseMm: number): void {
  for (;;) {
    const first = ring[0];
    const second = ring[1];
    const last = ring.at(-1);
    if (ring.length < 3 || first === undefined || second === undefined || last === undefined) return;
    if (!isApart(last, first, noiseMm) || isIdle(ring.at(-2), last, first, noiseMm)) ring.pop();
    else if (isIdle(last, first, second, noiseMm)) ring.shift();
    else return;
  }
}

/** Whether the last side that is not level goes up, on the way from the last corner but one round to itself. */
function risesLast(ring: readonly Vec2[]): boolean {
  let isRising = false;
  let corner = ring.at(-1);
  for (const after of ring) {
    if (corner !== undefined && after[1] !== corner[1]) isRising = after[1] > corner[1];
    corner = after;
  }
  return isRising;
}
