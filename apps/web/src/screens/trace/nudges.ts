// The buttons that move the piece in hand: a millimetre in the direction that they show on the photo, or a degree.

import type { LaidPiece, Vec2 } from '@cairnmark/geometry';
import { placePiece } from '@cairnmark/geometry';
import type { Camera } from '@cairnmark/photo';
import { imagePoint, planePoint } from '@cairnmark/photo';
import { pushApart } from '../../photo/push-apart.ts';
import type { Stood } from './heights.ts';

export type NudgeWay = 'left' | 'right' | 'back' | 'front';

const ON_PHOTO: Readonly<Record<NudgeWay, Vec2>> = { left: [-1, 0], right: [1, 0], back: [0, -1], front: [0, 1] };

const NUDGE_MM = 1;
/** px. Far enough that a direction is seen, near enough that the photo is straight there. */
const STEP_PX = 10;

/** A piece moved a millimetre, so that it is seen to move that way, and off what it then only just overlaps. */
export function moved(camera: Camera, hand: Stood, way: NudgeWay, others: readonly Stood[]): LaidPiece {
  const [x, y] = nudgeMm(camera, hand, way);
  return apart(hand, { ...hand.laid, xMm: hand.laid.xMm + x, yMm: hand.laid.yMm + y }, others);
}

/** Turned by so many degrees, counter-clockwise. */
export const turned = (hand: Stood, degrees: number, others: readonly Stood[]): LaidPiece =>
  apart(hand, { ...hand.laid, turnRad: hand.laid.turnRad + degrees * DEGREE }, others);

function apart({ piece }: Stood, laid: LaidPiece, others: readonly Stood[]): LaidPiece {
  const { solid, resting } = piece;
  const there = placePiece({ laid, solid, resting }, 0, piece.bottomMm);
  const [x, y] = pushApart(
    there,
    others.map((one) => one.piece),
  );
  return { ...laid, xMm: laid.xMm + x, yMm: laid.yMm + y };
}

const DEGREE = Math.PI / 180;

function nudgeMm(camera: Camera, { laid, piece }: Stood, way: NudgeWay): Vec2 {
  const at = imagePoint(camera, [laid.xMm, laid.yMm, piece.bottomMm]);
  const [dx, dy] = ON_PHOTO[way];
  const there = at && planePoint(camera, [at[0] + STEP_PX * dx, at[1] + STEP_PX * dy], piece.bottomMm);
  if (there === null) return [0, 0];
  const [x, y] = [there[0] - laid.xMm, there[1] - laid.yMm];
  const length = Math.hypot(x, y);
  return [(NUDGE_MM * x) / length, (NUDGE_MM * y) / length];
}
