// What of a piece is highest, as a photo from the side shows it: a tip, the two ends of a flat top, the two ends of a lying cylinder,
// the upper rim of a ball. Frame: mm, about the piece's spot before any turn, the highest point at z = 0.

import type { Resting, Solid, Vec2, Vec3 } from '@cairnmark/geometry';
import { placePiece } from '@cairnmark/geometry';
import type { Camera } from '../camera/camera.ts';
import { imagePoint, positionOf } from '../camera/camera.ts';
import { SAME_CORNER_MM, SAME_END_PX } from '../tolerance.ts';
import { figureOf } from './figure.ts';
import type { PlanPose } from './pose.ts';
import { placed } from './pose.ts';
import { cornersSeen } from './rim.ts';

export type TopShape =
  /** One point is a tip, two are a ridge, more are a flat top. */
  | { readonly kind: 'corners'; readonly corners: readonly Vec3[] }
  | { readonly kind: 'disc'; readonly radiusMm: number }
  | { readonly kind: 'ball'; readonly radiusMm: number }
  | { readonly kind: 'log'; readonly radiusMm: number; readonly halfLengthMm: number };

export function topShapeOf(solid: Solid, resting: Resting): TopShape {
  const laid = { kind: solid.id, resting: resting.id, xMm: 0, yMm: 0, turnRad: 0 };
  const { body, topMm, flatFaces } = placePiece({ laid, solid, resting }, 0, 0);
  const figure = figureOf(solid, resting);
  if (figure?.kind === 'log') return figure;
  const round = body.find((one) => one.kind === 'ball' || (one.kind === 'half-ball' && one.axis[2] > SAME_CORNER_MM));
  if (round !== undefined && round.kind !== 'points') return { kind: 'ball', radiusMm: round.radiusMm };
  const disc = flatFaces.find((face) => face.kind === 'disc' && Math.abs(face.centre[2] - topMm) <= SAME_CORNER_MM);
  if (disc?.kind === 'disc') return { kind: 'disc', radiusMm: disc.radiusMm };
  const points = body.flatMap((one) => (one.kind === 'points' ? one.points : []));
  const highest = points.filter(([, , z]) => Math.abs(z - topMm) <= SAME_CORNER_MM);
  return { kind: 'corners', corners: highest.map(([x, y]) => [x, y, 0]) };
}

/** How many taps the top asks for. */
export const tapsFor = (top: TopShape): 1 | 2 =>
  top.kind === 'ball' || (top.kind === 'corners' && top.corners.length === 1) ? 1 : 2;

/** The points to be tapped, from left to right as seen; of a ball none: its rim is met by a line of sight, not at a point. */
export function topSeen(camera: Camera, top: TopShape, pose: PlanPose, topMm: number): readonly Vec3[] {
  const [pair = []] = topPairs(camera, topPoints(camera, top, pose, topMm));
  return topEnds(camera, top, pose, topMm, pair);
}

/** The same, where it is known which of its points were tapped (see `MeasuredHeight.ends`). */
export function topEnds(
  camera: Camera,
  top: TopShape,
  pose: PlanPose,
  topMm: number,
  ends: readonly number[],
): readonly Vec3[] {
  const points = topPoints(camera, top, pose, topMm);
  return ends.flatMap((k) => {
    const point = points[k];
    return point === undefined ? [] : [point];
  });
}

/** All points of the top that may be its end as seen, in an order that does not depend on the camera's place. */
export function topPoints(camera: Camera, top: TopShape, pose: PlanPose, topMm: number): readonly Vec3[] {
  if (top.kind === 'ball') return [];
  if (top.kind === 'disc') return discEnds(camera, top.radiusMm, [pose.xMm, pose.yMm], topMm);
  if (top.kind === 'log') return upperSide(camera, top, pose, topMm);
  return top.corners.map((corner) => placed(pose, topMm, corner));
}

/**
 * Which two of the points may be the left and the right end, the likeliest first; of a tip the one. Seen face on, a box has two corners
 * at each end, one behind the other, and who taps may have meant either; seen end on, a ridge has no left and right.
 */
export function topPairs(camera: Camera, points: readonly Vec3[]): readonly (readonly number[])[] {
  if (points.length === 1) return [[0]];
  const shown = points.map((point) => imagePoint(camera, point)?.[0] ?? Number.NaN);
  const byLeft = shown.map((u, k) => ({ u, k })).sort((a, b) => a.u - b.u);
  const [least, most] = [byLeft[0]?.u ?? 0, byLeft.at(-1)?.u ?? 0];
  const lefts = byLeft.filter(({ u }) => u - least <= SAME_END_PX);
  const rights = [...byLeft].reverse().filter(({ u }) => most - u <= SAME_END_PX);
  return lefts.flatMap((left) => rights.filter(({ k }) => k !== left.k).map((right) => [left.k, right.k]));
}

/** Where lines of sight touch the rim, in plan: the ends of the flat top as seen. */
function discEnds(camera: Camera, radiusMm: number, [x, y]: Vec2, zMm: number): readonly Vec3[] {
  const [lensX, lensY] = positionOf(camera);
  const towards = Math.atan2(lensY - y, lensX - x);
  const half = Math.acos(Math.min(1, radiusMm / Math.hypot(lensX - x, lensY - y)));
  return [towards - half, towards + half].map((turn) => [
    x + radiusMm * Math.cos(turn),
    y + radiusMm * Math.sin(turn),
    zMm,
  ]);
}

/** Of the two sides along which lines of sight touch a lying cylinder, the one that shows higher. */
function upperSide(
  camera: Camera,
  { radiusMm, halfLengthMm }: Extract<TopShape, { kind: 'log' }>,
  pose: PlanPose,
  topMm: number,
): readonly Vec3[] {
  const figure = { kind: 'log', centre: [0, 0, -radiusMm], radiusMm, halfLengthMm } as const;
  const corners = cornersSeen(camera, figure, pose, topMm);
  const height = (k: number): number => corners[k]?.[2] ?? 0;
  const [a, b, c, d] = corners;
  if (!(a && b && c && d)) return [];
  return height(0) > height(1) ? [a, d] : [b, c];
}
