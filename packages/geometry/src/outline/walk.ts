// The boundary walk: of the boundary of every piece, the stretches that lie inside no other piece.
// What is left over all pieces is the boundary of their union, each stretch once, with the inside on its left.

import { boxesMeet } from './box.ts';
import { rimOutsideDisc, rimOutsidePolygon } from './cover-rim.ts';
import type { Cover, SharedStretch } from './cover-side.ts';
import { coverByDisc, coverByPolygon, sidesThatMatter } from './cover-side.ts';
import type { Side } from './edge.ts';
import { FULL_TURN, lengthBetween, placeOf, xAt, yAt } from './edge.ts';
import type { DiscPiece, Piece, Run } from './piece.ts';
import type { Spans } from './spans.ts';
import { common, NO_SPANS, WHOLE_RIM, WHOLE_SIDE, without } from './spans.ts';

/** For each edge of a piece the stretches that are left. */
export type EdgesLeft = readonly Spans[];

export interface WalkInput {
  /** Where sides coincide and run the same way, the earlier piece keeps them. */
  readonly pieces: readonly Piece[];
  /** For each piece the indices of those that may cover it, rising. */
  readonly near: readonly (readonly number[])[];
  readonly noiseMm: number;
  readonly roundingMm: number;
  /** Told of every pair found to overlap or to share a side, with the length covered; of some pairs more than once. */
  readonly meet: (i: number, j: number, coveredMm: number) => void;
}

/** For each piece what is left of its boundary, beginning with `start`. */
export function walk(input: WalkInput, start: (piece: Piece, i: number) => EdgesLeft): readonly EdgesLeft[] {
  const left: EdgesLeft[] = [];
  input.pieces.forEach((piece, i) => {
    const own = start(piece, i);
    if (piece.kind === 'disc') left.push([rimLeft(piece, i, own[0] ?? NO_SPANS, input)]);
    else left.push(piece.runs.flatMap((run) => runLeft(run, i, own, input, left)));
  });
  return left;
}

/** The whole boundary of a piece. */
export const wholeBoundary = (piece: Piece): EdgesLeft =>
  piece.kind === 'disc' ? WHOLE_DISC : piece.edges.map(() => WHOLE_SIDE);

const WHOLE_DISC: EdgesLeft = [WHOLE_RIM];

function rimLeft({ rim }: DiscPiece, i: number, start: Spans, { pieces, near, roundingMm, meet }: WalkInput): Spans {
  let left = start;
  for (const j of near[i] ?? []) {
    const other = pieces[j];
    if (other === undefined || left.length === 0) break;
    const outside =
      other.kind === 'disc'
        ? rimOutsideDisc(rim, other.rim, roundingMm)
        : rimOutsidePolygon(rim, other.edges, roundingMm);
    const coveredMm = lengthBetween(rim, 0, FULL_TURN - outside.reduce((sum, { from, to }) => sum + to - from, 0));
    // Beyond the sides of a polygon apart from it lies the whole rim, put together from arcs.
    if (coveredMm <= roundingMm) continue;
    left = common(left, outside);
    meet(i, j, coveredMm);
  }
  return left;
}

/** A piece that may cover sides of a run; of a polygon, the sides that matter there. */
interface Coverer {
  readonly j: number;
  readonly piece: Piece;
  readonly sides: readonly Side[];
}

function runLeft(run: Run, i: number, start: EdgesLeft, input: WalkInput, done: readonly EdgesLeft[]): EdgesLeft {
  const coverers = coverersOf(run, i, input);
  return run.sides.map((side) => {
    let left = start[side.index] ?? NO_SPANS;
    for (const { j, piece, sides } of coverers) {
      if (left.length === 0) break;
      const cover =
        piece.kind === 'disc'
          ? coverByDisc(side, piece.rim, input.roundingMm)
          : coverByPolygon(side, sides, i < j, input.noiseMm);
      if (cover === undefined) continue;
      input.meet(i, j, lengthBetween(side, cover.from, cover.to));
      left = takeAway(left, side, cover, i < j ? undefined : done[j]);
    }
    return left;
  });
}

function coverersOf(run: Run, i: number, { pieces, near, noiseMm }: WalkInput): readonly Coverer[] {
  const coverers: Coverer[] = [];
  for (const j of near[i] ?? []) {
    const piece = pieces[j];
    if (piece === undefined || !boxesMeet(run, piece, noiseMm)) continue;
    const sides = piece.kind === 'disc' ? NO_SIDES : sidesThatMatter(piece.edges, run, noiseMm);
    if (sides === null) continue;
    // Where the whole run lies inside one piece, no other matters.
    if (piece.kind === 'polygon' && sides.length === 0) return [{ j, piece, sides }];
    coverers.push({ j, piece, sides });
  }
  return coverers;
}

const NO_SIDES: readonly Side[] = [];

/**
 * Takes a cover away, but not where the side coincides with one of the other piece that runs the same way: there the
 * earlier piece keeps it, as far as anything is left of it. `earlier` is what is left of an earlier piece, if it is one.
 */
function takeAway(left: Spans, side: Side, cover: Cover, earlier: EdgesLeft | undefined): Spans {
  if (cover.shared.length === 0) return without(left, cover.from, cover.to);
  let gone: Spans = [cover];
  for (const stretch of cover.shared) {
    for (const kept of keptOf(side, stretch, earlier)) gone = without(gone, kept.from, kept.to);
  }
  return gone.reduce((rest, span) => without(rest, span.from, span.to), left);
}

/** The part of a shared stretch that the side keeps: all of it before a later piece, before an earlier one what that lost. */
function keptOf(side: Side, stretch: SharedStretch, earlier: EdgesLeft | undefined): Spans {
  const theirs = earlier?.[stretch.with.index] ?? NO_SPANS;
  const place = (at: number): number => placeOf(side, xAt(stretch.with, at), yAt(stretch.with, at));
  return theirs.reduce((rest, span) => without(rest, place(span.from), place(span.to)), [stretch] as Spans);
}
