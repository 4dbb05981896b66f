// The traced pieces as a stack, the one of them that is highest, and the height that the photo from the side tells.

import type { Bench } from '@cairnmark/editing';
import type { LaidPiece, PlacedPiece, Result } from '@cairnmark/geometry';
import { dropPieces, failure, success } from '@cairnmark/geometry';
import type { FittedCamera, MeasuredHeight, PhotoIssue, TopShape } from '@cairnmark/photo';
import { heightFromSide, makeRoom, topShapeOf } from '@cairnmark/photo';
import type { TracedSpot } from '../../photo/fit-piece.ts';
import type { Top } from './tracing.ts';

/** Each traced piece with where it comes to lie; none of a layout that cannot be. */
export interface Stood {
  readonly laid: LaidPiece;
  readonly piece: PlacedPiece;
  readonly spotCovariance: TracedSpot['spotCovariance'];
  /** Numbers of the pieces it rests on; none: the table. */
  readonly holders: readonly number[];
}

/** What stands a little in each other is set apart, and all of it let down as it will be in the layout. */
export function stoodOf(traced: readonly TracedSpot[], { solids, slackMm }: Bench): readonly Stood[] {
  const apart = makeRoom(traced);
  const dropped = dropPieces(
    apart.map(({ laid }) => laid),
    solids,
    slackMm,
  );
  if (!dropped.ok) return [];
  return dropped.value.pieces.flatMap((piece, k) => {
    const spot = apart[k];
    const below = dropped.value.supports.filter(({ upper }) => upper === piece.index);
    const holders = below.flatMap(({ lower }) => (lower === 'table' ? [] : [lower]));
    return spot === undefined ? [] : [{ laid: spot.laid, spotCovariance: spot.spotCovariance, piece, holders }];
  });
}

export interface HighestPiece extends Stood {
  readonly number: number;
  readonly shape: TopShape;
}

/** The piece that was said to be highest, else the one that is by the sums; null: there is none. */
export function highestOf(stood: readonly Stood[], said: number | null): HighestPiece | null {
  const tops = stood.map(({ piece }) => piece.topMm);
  const number = said ?? tops.indexOf(Math.max(...tops));
  const one = stood[number];
  return one === undefined ? null : { ...one, number, shape: topShapeOf(one.piece.solid, one.piece.resting) };
}

/** The ways in which the photo from the side may have been taken. */
export const camerasOf = (side: {
  readonly camera: FittedCamera;
  readonly halfTurned: FittedCamera | null;
}): readonly FittedCamera[] => (side.halfTurned === null ? [side.camera] : [side.camera, side.halfTurned]);

export interface ReadHeight extends MeasuredHeight {
  /** By which it was read. */
  readonly camera: FittedCamera;
}

/**
 * The height of the top by its taps, nudged as it was. Of several cameras, as from the two sides of a plain sheet, the one is
 * right under which the taps lie where the photo from above says.
 */
export function heightOf(
  cameras: readonly FittedCamera[],
  { laid, piece, shape, spotCovariance }: HighestPiece,
  { taps, nudgedMm }: Top,
): Result<ReadHeight, PhotoIssue> {
  const spot = { shape, pose: laid, spotCovariance, stackedMm: piece.topMm };
  const all = cameras.map((camera) => {
    const read = heightFromSide(camera, spot, { pixels: taps, sigmaPx: TAP_SIGMA_PX });
    return read.ok ? success({ ...read.value, heightMm: read.value.heightMm + nudgedMm, camera }) : read;
  });
  const [best] = all
    .flatMap((one) => (one.ok ? [one.value] : []))
    .sort((one, other) => one.offSigmas - other.offSigmas);
  return best === undefined ? failure(all.flatMap((one) => (one.ok ? [] : one.issues))) : success(best);
}

/** px. How well a tap is set with the magnifier. */
const TAP_SIGMA_PX = 2;
