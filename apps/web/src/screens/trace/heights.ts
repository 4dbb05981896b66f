// The traced pieces as a stack, the one of them that is highest, and the height that the photo from the side tells.

import type { Bench } from '@cairnmark/editing';
import type { LaidPiece, PlacedPiece, Result } from '@cairnmark/geometry';
import { dropPieces, failure, success } from '@cairnmark/geometry';
import type { FittedCamera, LikeliestHeight, PhotoIssue, TopShape } from '@cairnmark/photo';
import { asHigh, likeliestHeight, makeRoom, tapsFor, topShapeOf } from '@cairnmark/photo';
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

/** The piece that was said to be highest, else those that may be by the sums, which all ask for as many taps as the first. */
export function highestOf(stood: readonly Stood[], said: number | null): readonly HighestPiece[] {
  const numbers = said === null ? asHigh(stood.map(({ piece }) => piece.topMm)) : [said];
  const pieces = numbers.flatMap((number) => {
    const one = stood[number];
    return one === undefined ? [] : [{ ...one, number, shape: topShapeOf(one.piece.solid, one.piece.resting) }];
  });
  const [first] = pieces;
  return first === undefined ? [] : pieces.filter(({ shape }) => tapsFor(shape) === tapsFor(first.shape));
}

/** The ways in which the photo from the side may have been taken. */
export const camerasOf = (side: {
  readonly camera: FittedCamera;
  readonly halfTurned: FittedCamera | null;
}): readonly FittedCamera[] => (side.halfTurned === null ? [side.camera] : [side.camera, side.halfTurned]);

export interface ReadHeight extends LikeliestHeight {
  readonly highest: HighestPiece;
}

/** The height of the top by its taps, nudged as it was: of the piece and the camera that the taps fit best. */
export function heightOf(
  cameras: readonly FittedCamera[],
  highest: readonly HighestPiece[],
  { taps, nudgedMm }: Top,
): Result<ReadHeight, PhotoIssue> {
  const tops = highest.map(({ laid, piece, shape, spotCovariance }) => {
    return { shape, pose: laid, spotCovariance, stackedMm: piece.topMm };
  });
  const read = likeliestHeight(cameras, tops, { pixels: taps, sigmaPx: TAP_SIGMA_PX });
  if (!read.ok) return read;
  const piece = highest[read.value.top];
  if (piece === undefined) return failure([]);
  return success({ ...read.value, heightMm: read.value.heightMm + nudgedMm, highest: piece });
}

/** px. How well a tap is set with the magnifier. */
const TAP_SIGMA_PX = 2;
