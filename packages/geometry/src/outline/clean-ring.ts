// Rings as they come, from traced photos too, made fit for the walk; mm.
// Doubled points and points along a side are left out; what is left is told convex or not.

import { signedAreaMm2 } from '../kernel/polygon.ts';
import type { Vec2 } from '../kernel/vec.ts';
import { cross2, dot2, length2, sub2 } from '../kernel/vec.ts';

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
 * True when a cleaned ring runs once round a convex region, either way. All turns the same way is not enough (a
 * five-pointed star does that): once round, a ring goes up once and down once.
 */
export function isConvexRing(ring: readonly Vec2[]): boolean {
  let [lefts, rights, changes] = [0, 0, 0];
  let rising = risesLast(ring);
  forCorners(ring, (before, corner, after) => {
    const turn = cross2(sub2(corner, before), sub2(after, corner));
    if (turn >= 0) lefts += 1;
    if (turn <= 0) rights += 1;
    const rise = after[1] - corner[1];
    if (rise !== 0 && rise > 0 !== rising) {
      changes += 1;
      rising = rise > 0;
    }
  });
  return ring.length >= 3 && changes === 2 && (lefts === 0 || rights === 0);
}

/** The ring running counter-clockwise. */
export function counterClockwise(ring: readonly Vec2[]): readonly Vec2[] {
  return signedAreaMm2(ring) >= 0 ? ring : [...ring].reverse();
}

function isApart(a: Vec2 | undefined, b: Vec2, noiseMm: number): boolean {
  return a === undefined || length2(sub2(a, b)) > noiseMm;
}

/** True when `corner` lies on the way from `before` to `after`: it does not turn, and it is no spike. */
function isIdle(before: Vec2 | undefined, corner: Vec2 | undefined, after: Vec2, noiseMm: number): boolean {
  if (before === undefined || corner === undefined) return false;
  const [into, on, across] = [sub2(corner, before), sub2(after, corner), sub2(after, before)];
  return dot2(into, on) > 0 && Math.abs(cross2(into, across)) <= noiseMm * length2(across);
}

/** Cleans where the end of the ring meets its start. */
function trimSeam(ring: Vec2[], noiseMm: number): void {
  for (;;) {
    const [first, second] = ring;
    const last = ring.at(-1);
    if (ring.length < 3 || first === undefined || second === undefined || last === undefined) return;
    if (!isApart(last, first, noiseMm) || isIdle(ring.at(-2), last, first, noiseMm)) ring.pop();
    else if (isIdle(last, first, second, noiseMm)) ring.shift();
    else return;
  }
}

function forCorners(ring: readonly Vec2[], visit: (before: Vec2, corner: Vec2, after: Vec2) => void): void {
  let before = ring.at(-2);
  let corner = ring.at(-1);
  for (const after of ring) {
    if (before !== undefined && corner !== undefined) visit(before, corner, after);
    before = corner;
    corner = after;
  }
}

/** Whether the last side of the ring that is not level goes up, taken from the end of the corners as visited. */
function risesLast(ring: readonly Vec2[]): boolean {
  let rising = false;
  forCorners(ring, (_, corner, after) => {
    if (after[1] !== corner[1]) rising = after[1] > corner[1];
  });
  return rising;
}
