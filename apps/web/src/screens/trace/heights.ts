// The traced pieces as a stack, the one of them that is highest, and the height that the photo from the side tells.

import type { Bench } from '@cairnmark/editing';
import type { LaidPiece, PlacedPiece, Result } from '@cairnmark/geometry';
import { dropPieces, failure, success } from '@cairnmark/geometry';
import type { FittedCamera, LikeliestHeight, PhotoIssue, TopPiece } from '@cairnmark/photo';
import { asHigh, likeliestHeight, makeRoom, tapsFor, topShapeOf } from '@cairnmark/photo';
import type { TracedSpot } from '../../photo/fit-piece.ts';
import { TAP_SIGMA_PX } from '../../photo/fit-piece.ts';
import { topOfShape } from './shape.ts';
import type { KeptShape, Top } from './tracing.ts';

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

/** What may be the top of the build. */
export interface TopOf extends TopPiece {
  /** Of the piece, or of the shape, counted on from the pieces. */
  readonly number: number;
}

/** What was said to be highest, else what may be by the sums; all of them ask for as many taps as the first. */
export function highestOf(
  stood: readonly Stood[],
  shapes: readonly KeptShape[],
  said: number | null,
): readonly TopOf[] {
  const tops = topsOf(stood, shapes);
  const numbers = said === null ? asHigh(tops.map(({ stackedMm }) => stackedMm)) : [said];
  const asked = tops.filter(({ number }) => numbers.includes(number));
  const [first] = asked;
  return first === undefined ? [] : asked.filter(({ shape }) => tapsFor(shape) === tapsFor(first.shape));
}

function topsOf(stood: readonly Stood[], shapes: readonly KeptShape[]): readonly TopOf[] {
  const pieces = stood.map(({ laid, piece, spotCovariance }, number): TopOf => {
    return {
      number,
      shape: topShapeOf(piece.solid, piece.resting),
      pose: laid,
      spotCovariance,
      stackedMm: piece.topMm,
    };
  });
  const free = shapes.map((one, k): TopOf => {
    const { shape, pose } = topOfShape(one);
    return { number: stood.length + k, shape, pose, spotCovariance: SHAPE_COVARIANCE, stackedMm: one.planeMm };
  });
  return [...pieces, ...free];
}

/** mm2. Corners of a traced shape are a millimetre off. */
const SHAPE_COVARIANCE = [1, 0, 0, 1] as const;

/** The ways in which the photo from the side may have been taken. */
export const camerasOf = (side: {
  readonly camera: FittedCamera;
  readonly halfTurned: FittedCamera | null;
}): readonly FittedCamera[] => (side.halfTurned === null ? [side.camera] : [side.camera, side.halfTurned]);

export interface ReadHeight extends LikeliestHeight {
  readonly highest: TopOf;
}

/** The height of the top by its taps, nudged as it was: of the piece and the camera that the taps fit best. */
export function heightOf(
  cameras: readonly FittedCamera[],
  highest: readonly TopOf[],
  { taps, nudgedMm }: Top,
): Result<ReadHeight, PhotoIssue> {
  const read = likeliestHeight(cameras, highest, { pixels: taps, sigmaPx: TAP_SIGMA_PX });
  if (!read.ok) return read;
  const top = highest[read.value.top];
  if (top === undefined) return failure([]);
  return success({ ...read.value, heightMm: read.value.heightMm + nudgedMm, highest: top });
}
