// From taps on two photos to a build: every piece is set in the photo from above, from the table up, each at the height that the pieces
// below it give; the photo of the side then says how high the build really is.

import type { LaidPiece, PlacedPiece, Resting, Result, Solid } from '@cairnmark/geometry';
import { failure, success } from '@cairnmark/geometry';
import type { FittedCamera } from '../camera/fitted-camera.ts';
import type { Photo } from '../image/photo.ts';
import type { PhotoIssue } from '../issues.ts';
import { spotVariance } from './beside.ts';
import type { FittedSolid, Taps } from './fit-solid.ts';
import type { MeasuredHeight, TopPiece } from './height-from-side.ts';
import { asHigh, likeliestHeight } from './likeliest-height.ts';
import { makeRoom } from './make-room.ts';
import type { SetPiece } from './set-piece.ts';
import { setPiece } from './set-piece.ts';
import { topShapeOf } from './top-shape.ts';

export interface View {
  /** Null: its camera alone is used, and pieces are set by taps without edges. */
  readonly photo: Photo | null;
  readonly camera: FittedCamera;
}

/** A piece of the list with its taps, in building order. */
export interface TappedPiece {
  /** Id of the kind in the kit. */
  readonly kind: string;
  readonly solid: Solid;
  readonly resting: Resting;
  readonly taps: Taps;
  /** It stands on the table, whatever it seems to lie on. Absent: what its place says. */
  readonly on?: 'table';
  /** Tapped on the face that it stands on: see `ListedPiece`. */
  readonly by?: 'base';
}

export interface TowerTaps {
  readonly pieces: readonly TappedPiece[];
  /** In the photo of the side; null where there are none. */
  readonly top: TopTaps | null;
}

export interface TopTaps extends Taps {
  /** Number of the piece whose top was tapped. Absent: the highest; of several as high, the one that the taps fit. */
  readonly piece?: number;
}

export interface TracedPiece {
  readonly laid: LaidPiece;
  readonly placed: PlacedPiece;
  readonly fit: FittedSolid;
  /** Variance of its spot, mm2, along the direction in which it is known least. */
  readonly spotVarianceMm2: number;
}

export interface TracedTower {
  readonly pieces: readonly TracedPiece[];
  /** What `engine` evaluates. */
  readonly layout: { readonly kind: 'laid-out'; readonly pieces: readonly LaidPiece[]; readonly traced: true };
  /** By the sizes of the pieces. */
  readonly stackedMm: number;
  /** By the photo of the side; null without taps there. */
  readonly height: MeasuredHeight | null;
}

/** `side`: null where there is no photo of the side. The first piece that cannot be set ends it: those above stand on it. */
export function traceTower(top: View, side: View | null, taps: TowerTaps): Result<TracedTower, PhotoIssue> {
  const traced: TracedPiece[] = [];
  for (const [index, piece] of taps.pieces.entries()) {
    const below = traced.map(({ placed }) => placed);
    const set = setPiece(top, piece, index, below);
    if (!set.ok) return failure(set.issues.map((fault) => ({ ...fault, path: ['pieces', index, ...fault.path] })));
    traced.push(tracedPiece(piece, set.value));
  }
  const pieces = makeRoom(traced);
  const stackedMm = Math.max(0, ...pieces.map(({ placed }) => placed.topMm));
  const height = side === null || taps.top === null ? null : measured(side, pieces, taps.top);
  if (height !== null && !height.ok) {
    return failure(height.issues.map((fault) => ({ ...fault, path: ['top', ...fault.path] })));
  }
  return success({
    pieces,
    layout: { kind: 'laid-out', pieces: pieces.map(({ laid }) => laid), traced: true },
    stackedMm,
    height: height === null ? null : height.value,
  });
}

function tracedPiece({ kind, resting, on }: TappedPiece, { placed, fit }: SetPiece): TracedPiece {
  const laid = { kind, resting: resting.id, ...fit.pose, ...(on === undefined ? {} : { on }) };
  return { laid, placed, fit, spotVarianceMm2: spotVariance(fit) };
}

/** Null where no piece was traced. */
function measured(
  { camera }: View,
  pieces: readonly TracedPiece[],
  taps: TopTaps,
): Result<MeasuredHeight, PhotoIssue> | null {
  const asked = taps.piece === undefined ? asHigh(pieces.map(({ placed }) => placed.topMm)) : [taps.piece];
  const tops = asked.flatMap((k) => {
    const piece = pieces[k];
    return piece === undefined ? [] : [topOf(piece)];
  });
  return tops.length === 0 ? null : likeliestHeight([camera], tops, taps);
}

function topOf({ placed, laid, fit: { covariance: c } }: TracedPiece): TopPiece {
  return {
    shape: topShapeOf(placed.solid, placed.resting),
    pose: { xMm: laid.xMm, yMm: laid.yMm, turnRad: laid.turnRad },
    spotCovariance: [c[0] ?? 0, c[1] ?? 0, c[3] ?? 0, c[4] ?? 0],
    stackedMm: placed.topMm,
  };
}
