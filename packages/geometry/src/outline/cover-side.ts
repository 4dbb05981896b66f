// Which stretch of a straight side lies inside another piece. The other piece is convex, so it is one stretch.

import { SHALLOW_SINE } from '../kernel/tolerance.ts';
import { meetingOf } from './alongside.ts';
import type { Box } from './box.ts';
import type { Rim, Side } from './edge.ts';
import { leftOf, placeOf } from './edge.ts';
import type { Span } from './spans.ts';

/** A stretch that a side has in common with one side of the other piece, running the same way. */
export interface SharedStretch extends Span {
  readonly with: Side;
}

/** The stretch inside the other piece, its rim counted in; the shared stretches, if any, may belong to either piece. */
export interface Cover extends Span {
  readonly shared: readonly SharedStretch[];
}

/**
 * The sides of a convex piece that matter to things inside `box`: those whose line it does not lie wholly inside of.
 * Null when it lies outside the piece; none when inside.
 */
export function sidesThatMatter(sides: readonly Side[], box: Box, noiseMm: number): readonly Side[] | null {
  const x = (box.minX + box.maxX) / 2;
  const y = (box.minY + box.maxY) / 2;
  const halfX = (box.maxX - box.minX) / 2;
  const halfY = (box.maxY - box.minY) / 2;
  const matter: Side[] = [];
  for (const side of sides) {
    const middle = leftOf(side, x, y);
    const reach = halfX * Math.abs(side.uy) + halfY * Math.abs(side.ux);
    if (middle + reach < -noiseMm) return null;
    if (middle - reach <= noiseMm) matter.push(side);
  }
  return matter;
}

/**
 * The stretch of `side` inside a convex piece given by the `sides` that matter. Sides that run opposite ways and coincide
 * count as inside (both give way); `sideFirst` says whether `side` is the lower of the two in the order of the walk.
 */
export function coverByPolygon(
  side: Side,
  sides: readonly Side[],
  sideFirst: boolean,
  noiseMm: number,
): Cover | undefined {
  let from = 0;
  let to = 1;
  let shared = NOT_SHARED;
  for (const other of sides) {
    const start = leftOf(other, side.ax, side.ay);
    const end = leftOf(other, side.bx, side.by);
    if (start > noiseMm && end > noiseMm) continue;
    if (start < -noiseMm && end < -noiseMm) return undefined;
    let at = start / (start - end);
    if (Math.abs(end - start) <= SHALLOW_SINE * side.lengthMm) {
      const meeting = meetingOf(side, other, sideFirst, noiseMm);
      if (meeting.kind === 'shared') {
        const sameWay = side.ux * other.ux + side.uy * other.uy > 0;
        if (sameWay) shared = [...shared, { from: meeting.from, to: meeting.to, with: other }];
        continue;
      }
      if (meeting.kind === 'crossing') at = meeting.at;
      else if (Math.abs(start) <= noiseMm && Math.abs(end) <= noiseMm && meeting.kind === 'apart') continue;
      else if (start >= 0 && end >= 0) continue;
      else if (start <= 0 && end <= 0) return undefined;
    }
    if (end > start) from = Math.max(from, at);
    else to = Math.min(to, at);
    if (to <= from) return undefined;
  }
  return { from, to, shared };
}

/** The stretch of a side inside a disc; none where it is tangent to within `roundingMm`. */
export function coverByDisc(side: Side, { x, y, radiusMm }: Rim, roundingMm: number): Cover | undefined {
  const off = leftOf(side, x, y);
  if (Math.abs(off) >= radiusMm - roundingMm) return undefined;
  const half = Math.sqrt((radiusMm - off) * (radiusMm + off)) / side.lengthMm;
  const foot = placeOf(side, x, y);
  const from = Math.max(0, foot - half);
  const to = Math.min(1, foot + half);
  return from < to ? { from, to, shared: NOT_SHARED } : undefined;
}

const NOT_SHARED: readonly SharedStretch[] = [];
