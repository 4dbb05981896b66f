// The height of a build whose top may be that of several pieces, or was seen by a camera that may have stood in several places.

import type { Result } from '@cairnmark/geometry';
import { failure, success } from '@cairnmark/geometry';
import type { FittedCamera } from '../camera/fitted-camera.ts';
import type { PhotoIssue } from '../issues.ts';
import { AS_HIGH_MM } from '../tolerance.ts';
import type { Taps } from './fit-solid.ts';
import type { MeasuredHeight, TopPiece } from './height-from-side.ts';
import { heightFromSide } from './height-from-side.ts';

export interface LikeliestHeight extends MeasuredHeight {
  readonly camera: FittedCamera;
  /** Which of the tops it was. */
  readonly top: number;
}

/** The one that the taps fit best; where none fits, why the first does not. At least one camera and one top. */
export function likeliestHeight(
  cameras: readonly FittedCamera[],
  tops: readonly TopPiece[],
  taps: Taps,
): Result<LikeliestHeight, PhotoIssue> {
  const tries = cameras.flatMap((camera) =>
    tops.map((piece, top) => ({ camera, top, read: heightFromSide(camera, piece, taps) })),
  );
  const [likeliest] = tries
    .flatMap(({ read, ...by }) => (read.ok ? [{ ...read.value, ...by }] : []))
    .sort((one, other) => one.misfit - other.misfit);
  if (likeliest !== undefined) return success(likeliest);
  const [first] = tries;
  return failure(first?.read.ok === false ? first.read.issues : []);
}

/** Numbers of those that may be the highest by their sizes. */
export function asHigh(topsMm: readonly number[]): readonly number[] {
  const highest = Math.max(...topsMm);
  return topsMm.flatMap((topMm, k) => (highest - topMm <= AS_HIGH_MM ? [k] : []));
}
