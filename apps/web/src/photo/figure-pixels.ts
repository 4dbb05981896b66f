// A piece as it shows in a photo: the figure that is tapped, as corners or as a round line.

import type { LaidPiece, PlacedPiece, Vec2, Vec3 } from '@cairnmark/geometry';
import type { Camera } from '@cairnmark/photo';
import { cornersSeen, figureOf, imagePoint, rimSeen } from '@cairnmark/photo';

export interface Drawn {
  /** Round: points close together; else the corners, in order. px of the photo. */
  readonly points: readonly Vec2[];
  readonly isRound: boolean;
}

/** Null where nothing of the piece, as it lies, can be tapped. */
export function figurePixels(camera: Camera, pose: LaidPiece, piece: PlacedPiece): Drawn | null {
  const figure = figureOf(piece.solid, piece.resting);
  if (figure === null) return null;
  const isRound = figure.kind === 'disc' || figure.kind === 'ball';
  const seen = isRound
    ? rimSeen(camera, figure, pose, piece.bottomMm, ROUND_POINTS)
    : cornersSeen(camera, figure, pose, piece.bottomMm);
  return { points: shown(camera, seen), isRound };
}

const ROUND_POINTS = 72;

const shown = (camera: Camera, points: readonly Vec3[]): readonly Vec2[] =>
  points.flatMap((point) => {
    const pixel = imagePoint(camera, point);
    return pixel === null ? [] : [pixel];
  });
