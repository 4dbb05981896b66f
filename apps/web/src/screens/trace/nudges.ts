// The buttons that move the piece in hand: a millimetre in the direction that they show on the photo, or a degree.

import type { LaidPiece, Vec2 } from '@cairnmark/geometry';
import { placePiece } from '@cairnmark/geometry';
import type { Camera } from '@cairnmark/photo';
import { imagePoint, planePoint } from '@cairnmark/photo';
import type { TracedSpot } from '../../photo/fit-piece.ts';

export type NudgeWay = 'left' | 'right' | 'back' | 'front';

const ON_PHOTO: Readonly<Record<NudgeWay, Vec2>> = { left: [-1, 0], right: [1, 0], back: [0, -1], front: [0, 1] };

const NUDGE_MM = 1;
/** px. Far enough that a direction is seen, near enough that the photo is straight there. */
const STEP_PX = 10;

/** A piece moved a millimetre, so that it is seen to move that way. */
export function moved(camera: Camera, spot: TracedSpot, way: NudgeWay): TracedSpot {
  const [x, y] = nudgeMm(camera, spot, way);
  return placedAnew(spot, { ...spot.laid, xMm: spot.laid.xMm + x, yMm: spot.laid.yMm + y });
}

/** Turned by so many degrees, counter-clockwise. */
export const turned = (spot: TracedSpot, degrees: number): TracedSpot =>
  placedAnew(spot, { ...spot.laid, turnRad: spot.laid.turnRad + degrees * DEGREE });

const DEGREE = Math.PI / 180;

function placedAnew(spot: TracedSpot, laid: LaidPiece): TracedSpot {
  const { solid, resting, index, bottomMm } = spot.placed;
  return { ...spot, laid, placed: placePiece({ laid, solid, resting }, index, bottomMm) };
}

function nudgeMm(camera: Camera, { laid, placed }: TracedSpot, way: NudgeWay): Vec2 {
  const at = imagePoint(camera, [laid.xMm, laid.yMm, placed.bottomMm]);
  const [dx, dy] = ON_PHOTO[way];
  const there = at && planePoint(camera, [at[0] + STEP_PX * dx, at[1] + STEP_PX * dy], placed.bottomMm);
  if (there === null) return [0, 0];
  const [x, y] = [there[0] - laid.xMm, there[1] - laid.yMm];
  const length = Math.hypot(x, y);
  return [(NUDGE_MM * x) / length, (NUDGE_MM * y) / length];
}
