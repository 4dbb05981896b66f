// Sides that look at each other across a narrow gap. The gap between them is filled by a convex piece, for the perimeter
// only: its bases lie on the two sides, which give way, and its mouths, straight across, are counted instead; mm.

import { FACING_RAD } from '../kernel/tolerance.ts';
import type { Vec2 } from '../kernel/vec.ts';
import { length2, sub2 } from '../kernel/vec.ts';
import type { Box } from './box.ts';
import { boxesMeet, boxOfSide } from './box.ts';
import type { Side } from './edge.ts';
import { xAt, yAt } from './edge.ts';
import type { PolygonPiece } from './piece.ts';
import { polygonPiece } from './piece.ts';
import type { Span } from './spans.ts';
import { common, NO_SPANS } from './spans.ts';
import type { EdgesLeft } from './walk.ts';

/** The filling of one gap. */
export interface Filling {
  readonly piece: PolygonPiece;
  /** Its sides that go across the gap: one or two. */
  readonly mouths: readonly Side[];
  /** The two outlines it joins. */
  readonly owners: readonly [number, number];
  readonly at: Vec2;
  /** Where it is widest. */
  readonly widthMm: number;
}

export interface GapLimits {
  /** The widest gap that is filled. */
  readonly reachMm: number;
  readonly noiseMm: number;
}

/** The fillings between two pieces; `leftA` and `leftB` say what of their boundaries is free. */
export function fillingsBetween(
  a: PolygonPiece,
  leftA: EdgesLeft,
  b: PolygonPiece,
  leftB: EdgesLeft,
  limits: GapLimits,
): readonly Filling[] {
  const fillings: Filling[] = [];
  const others = sidesAtGap(b, leftB, a, limits);
  if (others.length === 0) return fillings;
  for (const side of sidesAtGap(a, leftA, b, limits)) {
    for (const other of others) {
      const gap = areFacing(side, other) ? gapBetween(side, other, limits) : undefined;
      if (gap === undefined || !(isFree(leftA, side, gap.onSide) || isFree(leftB, other, gap.onOther))) continue;
      fillings.push(filling(side, other, gap, [a.owner, b.owner], limits.noiseMm));
    }
  }
  return fillings;
}

/** The sides of a piece that can face another one within reach and are not wholly covered. */
function sidesAtGap(piece: PolygonPiece, left: EdgesLeft, other: Box, { reachMm }: GapLimits): readonly Side[] {
  return piece.edges.filter(
    (side) => side.canFace && (left[side.index] ?? NO_SPANS).length > 0 && boxesMeet(boxOfSide(side), other, reachMm),
  );
}

const areFacing = (a: Side, b: Side): boolean => a.ux * b.ux + a.uy * b.uy < -Math.cos(FACING_RAD);

/** The stretches of two facing sides along the gap between them. */
interface Gap {
  readonly onSide: Span;
  readonly onOther: Span;
}

/**
 * The stretch over which two facing sides have a gap of 0 to the reach between them, measured straight across the line
 * half-way between their directions. Undefined when there is none, or when they coincide.
 */
function gapBetween(side: Side, other: Side, { reachMm, noiseMm }: GapLimits): Gap | undefined {
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
  const onOther = (x: number): number => ((x - otherStart) / (otherEnd - otherStart)) * other.lengthMm;
  const onSide = (x: number): number => (x / sideEnd) * side.lengthMm;
  return { onSide: { from: onSide(from), to: onSide(to) }, onOther: { from: onOther(to), to: onOther(from) } };
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

/** True when something of a stretch of a side is left. */
const isFree = (left: EdgesLeft, side: Side, stretch: Span): boolean =>
  common(left[side.index] ?? NO_SPANS, [stretch]).length > 0;

function filling(side: Side, other: Side, { onSide, onOther }: Gap, owners: readonly [number, number], noiseMm: number): Filling {
  const ring: Vec2[] = [];
  for (const corner of [
    placeOn(side, onSide.to),
    placeOn(side, onSide.from),
    placeOn(other, onOther.to),
    placeOn(other, onOther.from),
  ]) {
    if (ring.every((before) => length2(sub2(before, corner)) > noiseMm)) ring.push(corner);
  }
  const piece = polygonPiece(ring.map((at) => ({ at, canFace: false })), NO_OWNER);
  const mouths = piece.edges.filter((edge) => Math.abs(edge.ux * side.ux + edge.uy * side.uy) < HALF);
  const middle = ring.reduce(([x, y], corner): Vec2 => [x + corner[0] / ring.length, y + corner[1] / ring.length], [0, 0]);
  return { piece, mouths, owners, at: middle, widthMm: Math.max(...mouths.map((mouth) => mouth.lengthMm)) };
}

/** Bases run along the sides (cosine near 1), mouths across them (near 0): a half tells them apart. */
const HALF = 0.5;
const NO_OWNER = -1;

const placeOn = (on: Side, at: number): Vec2 => [xAt(on, at), yAt(on, at)];
