// The pose of a listed piece that fits its taps and the edges about it best.

import type { Vec2 } from '@cairnmark/geometry';
import { dot3, length3, sub3 } from '@cairnmark/geometry';
import type { Camera } from '../camera/camera.ts';
import { imagePoint, planePoint, positionOf, rayOf } from '../camera/camera.ts';
import { leastSquares } from '../numbers/least-squares.ts';
import type { Figure } from './figure.ts';
import type { PlanPose } from './pose.ts';
import { placed } from './pose.ts';
import { cornersSeen } from './rim.ts';

/** A pixel on a corner, on the side that begins at a corner, or on a round rim; and how well it is known. */
export interface Sighting {
  readonly pixel: Vec2;
  readonly on: { readonly kind: 'corner' | 'side'; readonly corner: number } | { readonly kind: 'rim' };
  readonly sigmaPx: number;
}

export interface PoseFit {
  readonly pose: PlanPose;
  /** Covariance of x (mm), y (mm) and turn (rad), row by row, as the sightings alone tell it. */
  readonly covariance: Float64Array;
  /** How far the sightings are off at most, in their own deviations. */
  readonly offSigmas: number;
}

/** Null when the sightings do not determine the pose. What is round keeps its turn. */
export function fitPose(
  camera: Camera,
  figure: Figure,
  bottomMm: number,
  start: PlanPose,
  sightings: readonly Sighting[],
): PoseFit | null {
  const turns = figure.kind === 'corners' || figure.kind === 'log';
  const poseOf = (p: ArrayLike<number>): PlanPose => ({
    xMm: p[0] ?? 0,
    yMm: p[1] ?? 0,
    turnRad: turns ? (p[2] ?? 0) : start.turnRad,
  });
  const solution = leastSquares({
    start: turns ? [start.xMm, start.yMm, start.turnRad] : [start.xMm, start.yMm],
    residuals: (p) => residualsOf(camera, figure, bottomMm, poseOf(p), sightings),
    measured: Number.POSITIVE_INFINITY,
    steps: STEPS,
  });
  if (solution === null) return null;
  const size = turns ? 3 : 2;
  const covariance = new Float64Array(9);
  for (let row = 0; row < size; row += 1) {
    for (let column = 0; column < size; column += 1) {
      covariance[3 * row + column] = solution.covariance[size * row + column] ?? 0;
    }
  }
  const offSigmas = Math.max(...Array.from(solution.residuals, Math.abs));
  return { pose: poseOf(solution.parameters), covariance, offSigmas };
}

/** mm, mm, rad. */
const STEPS: readonly number[] = [1e-3, 1e-3, 1e-5];

function residualsOf(
  camera: Camera,
  figure: Figure,
  bottomMm: number,
  pose: PlanPose,
  sightings: readonly Sighting[],
): Float64Array {
  const shown = cornersSeen(camera, figure, pose, bottomMm).map((corner) => imagePoint(camera, corner));
  return Float64Array.from(
    sightings.flatMap(({ pixel, on, sigmaPx }) => {
      if (on.kind === 'rim') return [rimOff(camera, figure, bottomMm, pose, pixel) / sigmaPx];
      const from = shown[on.corner] ?? null;
      if (from === null) return [Number.NaN];
      if (on.kind === 'corner') return [(pixel[0] - from[0]) / sigmaPx, (pixel[1] - from[1]) / sigmaPx];
      const to = shown[(on.corner + 1) % shown.length] ?? null;
      return [to === null ? Number.NaN : acrossPx(pixel, from, to) / sigmaPx];
    }),
  );
}

function acrossPx(pixel: Vec2, from: Vec2, to: Vec2): number {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  return (dx * (pixel[1] - from[1]) - dy * (pixel[0] - from[0])) / Math.hypot(dx, dy);
}

/** How far beside the rim a pixel looks, outwards positive, in pixels at that distance from the lens. */
function rimOff(camera: Camera, figure: Figure, bottomMm: number, pose: PlanPose, pixel: Vec2): number {
  if (figure.kind !== 'disc' && figure.kind !== 'ball') return Number.NaN;
  const centre = placed(pose, bottomMm, figure.centre);
  const away = sub3(centre, positionOf(camera));
  const pxPerMm = camera.focalPx / length3(away);
  if (figure.kind === 'disc') {
    const at = planePoint(camera, pixel, centre[2]);
    return at === null ? Number.NaN : pxPerMm * (Math.hypot(at[0] - centre[0], at[1] - centre[1]) - figure.radiusMm);
  }
  const ray = rayOf(camera, pixel);
  if (ray === null) return Number.NaN;
  const along = dot3(away, ray.along);
  return pxPerMm * (Math.sqrt(Math.max(0, dot3(away, away) - along * along)) - figure.radiusMm);
}
