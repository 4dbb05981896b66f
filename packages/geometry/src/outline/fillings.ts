// Narrow gaps between sides that look at each other. Each is filled by a convex piece, for the perimeter only: its bases lie
// on the two sides, which give way, and its mouths, straight across, are counted instead; mm.

import { clipConvex } from '../kernel/polygon.ts';
import type { Vec2 } from '../kernel/vec.ts';
import { length2, sub2 } from '../kernel/vec.ts';
import type { Box } from './box.ts';
import { boxesMeet, sideMeetsBox } from './box.ts';
import type { Edge, Side } from './edge.ts';
import { FULL_TURN, placeOf, xAt, yAt } from './edge.ts';
import type { Gap, GapLimits } from './facing-sides.ts';
import { acrossFrom, gapBetween } from './facing-sides.ts';
import type { Piece, PolygonPiece } from './piece.ts';
import { polygonPiece } from './piece.ts';
import type { Spans } from './spans.ts';
import { common, NO_SPANS, without } from './spans.ts';
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

/** A polygon with what is free of its boundary. */
interface FreePolygon {
  readonly piece: PolygonPiece;
  readonly left: EdgesLeft;
}

/** All fillings between pieces near each other; `joins` is told of every two pieces that get one. */
export function fillingsOf(
  pieces: readonly Piece[],
  left: readonly EdgesLeft[],
  near: readonly (readonly number[])[],
  limits: GapLimits,
  joins: (i: number, j: number) => void,
): readonly Filling[] {
  const fillings: Filling[] = [];
  pieces.forEach((a, i) => {
    for (const j of near[i] ?? []) {
      const b = pieces[j];
      if (j <= i || a.kind === 'disc' || b === undefined || b.kind === 'disc') continue;
      const nearPieces = (): readonly Piece[] => (near[i] ?? []).flatMap((k) => pieces[k] ?? []);
      const found = fillingsBetween(
        { piece: a, left: left[i] ?? [] },
        { piece: b, left: left[j] ?? [] },
        nearPieces,
        limits,
      );
      if (found.length > 0) joins(i, j);
      fillings.push(...found);
    }
  });
  return fillings;
}

/** The fillings between two polygons; `near` are the pieces that may stand between them. */
function fillingsBetween(
  a: FreePolygon,
  b: FreePolygon,
  near: () => readonly Piece[],
  limits: GapLimits,
): readonly Filling[] {
  const fillings: Filling[] = [];
  const others = sidesAtGap(b, a.piece, limits);
  for (const side of others.length > 0 ? sidesAtGap(a, b.piece, limits) : []) {
    for (const other of others) {
      const gap = gapBetween(side, other, limits);
      if (gap === undefined) continue;
      const filled = filling(side, other, gap, [a.piece.owner, b.piece.owner], limits.noiseMm);
      const free = freeAlong(gap, a.left[side.index], b.left[other.index]);
      const blocking = near().filter((piece) => piece !== a.piece && piece !== b.piece);
      if (inSight(free, side, filled.piece, blocking).length > 0) fillings.push(filled);
    }
  }
  return fillings;
}

/** The sides of a piece that come within reach of another one and are not wholly covered; none that bounds a curve. */
function sidesAtGap({ piece, left }: FreePolygon, other: Box, { reachMm }: GapLimits): readonly Side[] {
  return piece.edges.filter(
    (side) => side.canFace && (left[side.index] ?? NO_SPANS).length > 0 && sideMeetsBox(side, other, reachMm),
  );
}

/** The stretches of the side along the gap where both sides are free. */
function freeAlong(gap: Gap, leftOfSide: Spans = NO_SPANS, leftOfOther: Spans = NO_SPANS): Spans {
  const facing = common(leftOfOther, [gap.onOther]).map(({ from, to }) => ({
    from: acrossFrom(gap, to),
    to: acrossFrom(gap, from),
  }));
  return common(leftOfSide, facing);
}

/** Of the free stretches, those from which the other side is seen: no other piece stands in the gap there. */
function inSight(free: Spans, side: Side, gap: PolygonPiece, blocking: readonly Piece[]): Spans {
  let seen = free;
  for (const piece of blocking) {
    if (seen.length === 0) break;
    if (!boxesMeet(piece, gap, 0)) continue;
    const shadow = clipConvex(cornersOf(gap), cornersOf(piece)).map(([x, y]) => placeOf(side, x, y));
    if (shadow.length > 0) seen = without(seen, Math.min(...shadow), Math.max(...shadow));
  }
  return seen;
}

/** The corners of a piece; of a disc, eight points of its rim, which block a little less than it does. */
function cornersOf(piece: Piece): readonly Vec2[] {
  if (piece.kind === 'polygon') return piece.edges.map(({ ax, ay }): Vec2 => [ax, ay]);
  return Array.from({ length: 8 }, (_, k) => placeOn(piece.rim, (k * FULL_TURN) / 8));
}

function filling(
  side: Side,
  other: Side,
  { onSide, onOther }: Gap,
  owners: readonly [number, number],
  noiseMm: number,
): Filling {
  const ring: Vec2[] = [];
  for (const corner of [
    placeOn(side, onSide.to),
    placeOn(side, onSide.from),
    placeOn(other, onOther.to),
    placeOn(other, onOther.from),
  ]) {
    if (ring.every((before) => length2(sub2(before, corner)) > noiseMm)) ring.push(corner);
  }
  const piece = polygonPiece(ring, () => false, NO_OWNER);
  const mouths = piece.edges.filter((edge) => Math.abs(edge.ux * side.ux + edge.uy * side.uy) < HALF);
  const at: Vec2 = [(piece.minX + piece.maxX) / 2, (piece.minY + piece.maxY) / 2];
  return { piece, mouths, owners, at, widthMm: Math.max(...mouths.map((mouth) => mouth.lengthMm)) };
}

/** Bases run along the sides (cosine near 1), mouths across them (near 0): a half tells them apart. */
const HALF = 0.5;
const NO_OWNER = -1;

const placeOn = (on: Edge, at: number): Vec2 => [xAt(on, at), yAt(on, at)];
