// Two sides that look at each other across a narrow gap: along which stretches, and how wide; mm.

import { FACING_RAD } from '../kernel/tolerance.ts';
import type { Vec2 } from '../kernel/vec.ts';
import type { Side } from './edge.ts';
import { leftOf } from './edge.ts';
import type { Span } from './spans.ts';

export interface GapLimits {
  /** The widest gap that counts. */
  readonly reachMm: number;
  readonly noiseMm: number;
}

/** The stretches of two facing sides along the gap between them. */
export interface Gap {
  readonly onSide: Span;
  readonly onOther: Span;
}

/**
 * The stretch over which two facing sides have a gap of 0 to the reach between them, measured straight across the line
 * half-way between their directions. Undefined when there is none, when they coincide, or are too far from parallel.
 */
export function gapBetween(side: Side, other: Side, { reachMm, noiseMm }: GapLimits): Gap | undefined {
  if (side.ux * other.ux + side.uy * other.uy > FACING_COSINE || isOutOfReach(side, other, reachMm, noiseMm))
    return undefined;
  const [ux, uy] = middleDirection(side, other);
  const along = (x: number, y: number): number => (x - side.ax) * ux + (y - side.ay) * uy;
  const up = (x: number, y: number): number => (y - side.ay) * ux - (x - side.ax) * uy;
  const [sideEnd, otherStart] = [along(side.bx, side.by), along(other.ax, other.ay)];
  const otherEnd = along(other.bx, other.by);
  const sideSlope = up(side.bx, side.by) / sideEnd;
  const otherSlope = (up(other.bx, other.by) - up(other.ax, other.ay)) / (otherEnd - otherStart);
  const wide = (x: number): number => sideSlope * x - up(other.ax, other.ay) - otherSlope * (x - otherStart);

  const ends = { from: Math.max(0, otherEnd), to: Math.min(sideEnd, otherStart) };
  if (Math.max(wide(ends.from), wide(ends.to)) <= noiseMm) return undefined;
  const { from, to } = whereBetween(ends, wide, reachMm);
  if (to - from <= noiseMm) return undefined;
  const onSide = (x: number): number => x / sideEnd;
  const onOther = (x: number): number => (x - otherStart) / (otherEnd - otherStart);
  return { onSide: { from: onSide(from), to: onSide(to) }, onOther: { from: onOther(to), to: onOther(from) } };
}

const FACING_COSINE = -Math.cos(FACING_RAD);

/** True when the whole of `other` lies behind the line of `side`, or further before it than any gap. */
function isOutOfReach(side: Side, other: Side, reachMm: number, noiseMm: number): boolean {
  const start = -leftOf(side, other.ax, other.ay);
  const end = -leftOf(side, other.bx, other.by);
  return (start <= noiseMm && end <= noiseMm) || Math.min(start, end) > 2 * reachMm;
}

/** The part of a span on which a linear function lies between 0 and `most`. */
function whereBetween({ from, to }: Span, value: (x: number) => number, most: number): Span {
  const [first, last] = [value(from), value(to)];
  const reaches = (level: number): number => from + ((to - from) * (level - first)) / (last - first);
  const [low, high] = first < last ? [reaches(0), reaches(most)] : [reaches(most), reaches(0)];
  const inside = (v: number): boolean => v >= 0 && v <= most;
  return { from: inside(first) ? from : Math.max(from, low), to: inside(last) ? to : Math.min(to, high) };
}

/** The unit direction half-way between those of a side and of the other, turned round. */
function middleDirection(side: Side, other: Side): Vec2 {
  const [x, y] = [side.ux - other.ux, side.uy - other.uy];
  const length = Math.hypot(x, y);
  return [x / length, y / length];
}

/** The place on the side that lies straight across from a place on the other. */
export function acrossFrom({ onSide, onOther }: Gap, at: number): number {
  return onSide.to - ((at - onOther.from) / (onOther.to - onOther.from)) * (onSide.to - onSide.from);
}
