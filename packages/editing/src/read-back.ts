// What a build is like, piece by piece, for sentences: on what, how far off its middle and over its edge, beside what. mm.

import type { Beside, DroppedPieces, LaidPiece, PlacedPiece, Result, Side, StackIssue } from '@cairnmark/geometry';
import { besideEachOther, dropPieces, planOverlapDepth, success } from '@cairnmark/geometry';
import { degreesOf, onGrid } from './grid.ts';
import type { OverEdge } from './over-edge.ts';
import { overEdge } from './over-edge.ts';
import { sideOf } from './sides.ts';
import type { Bench, Pieces } from './types.ts';

export interface Reading {
  readonly index: number;
  readonly kind: string;
  readonly resting: string;
  /** Whole degrees from 0 up to 360, counter-clockwise seen from above. */
  readonly degrees: number;
  readonly bottomMm: number;
  readonly topMm: number;
  /** All that it rests on, the table first, then pieces in order; never empty. */
  readonly restsOn: readonly (number | 'table')[];
  /** Of these the one its axis stands over, or nearest to; the table where it rests on the table. */
  readonly mainly: number | 'table';
  /** Its axis from that of `mainly`, or from the middle of the table: to the right, and to the back. As `offset` takes it. */
  readonly xMm: number;
  readonly yMm: number;
  /** How far it reaches over the edge of all pieces that it rests on together; null: it does not, or it is on the table. */
  readonly overEdge: OverEdge | null;
  /** Pieces whose sides it touches, and on which side of them it stands. */
  readonly beside: readonly { readonly of: number; readonly side: Side }[];
}

/** A reading of every piece in building order; or why no stack can be built from them. */
export function readBack(pieces: Pieces, { solids, slackMm }: Bench): Result<readonly Reading[], StackIssue> {
  const dropped = dropPieces(pieces, solids, slackMm);
  if (!dropped.ok) return dropped;
  const besides = besideEachOther(dropped.value).filter(({ pushes }) => pushes);
  return success(
    dropped.value.pieces.flatMap((placed) => {
      const laid = pieces[placed.index];
      return laid === undefined ? [] : [readingOf(laid, placed, pieces, dropped.value, besides)];
    }),
  );
}

function readingOf(
  laid: LaidPiece,
  placed: PlacedPiece,
  pieces: Pieces,
  { pieces: all, supports }: DroppedPieces,
  besides: readonly Beside[],
): Reading {
  const { index, kind, bottomMm, topMm } = placed;
  const lower = new Set(supports.filter(({ upper }) => upper === index).map((support) => support.lower));
  const below = all.filter((piece) => lower.has(piece.index));
  const mainly = lower.has('table') ? 'table' : nearestBelow(laid, below);
  const from = mainly === 'table' ? undefined : pieces[mainly];
  return {
    index,
    kind,
    resting: laid.resting,
    degrees: degreesOf(laid.turnRad),
    bottomMm,
    topMm,
    restsOn: [...(lower.has('table') ? (['table'] as const) : []), ...below.map((piece) => piece.index)],
    mainly,
    ...offsetFrom(laid, from),
    overEdge: mainly === 'table' ? null : overEdge(placed, below),
    beside: besides.flatMap((pair) => besideOf(index, pair)),
  };
}

/** The axis of a piece from that of another, or from the middle of the table; to the right, and to the back. */
export const offsetFrom = (
  piece: LaidPiece,
  other: LaidPiece | undefined,
): { readonly xMm: number; readonly yMm: number } => ({
  xMm: onGrid(piece.xMm - (other?.xMm ?? 0)),
  yMm: onGrid(piece.yMm - (other?.yMm ?? 0)),
});

/** The piece that lies furthest under the axis, or least far from it; of equals the latest. */
function nearestBelow({ xMm, yMm }: LaidPiece, below: readonly PlacedPiece[]): number | 'table' {
  let nearest: number | 'table' = 'table';
  let deepestMm = Number.NEGATIVE_INFINITY;
  for (const { index, outline } of below) {
    const depthMm = planOverlapDepth({ kind: 'disc', centre: [xMm, yMm], radiusMm: 0 }, outline);
    if (depthMm < deepestMm) continue;
    deepestMm = depthMm;
    nearest = index;
  }
  return nearest;
}

function besideOf(index: number, { first, second, direction: [x, y] }: Beside): Reading['beside'] {
  if (index === second) return [{ of: first, side: sideOf([x, y]) }];
  return index === first ? [{ of: second, side: sideOf([-x, -y]) }] : [];
}
