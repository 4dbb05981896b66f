// How high a build is, from a photo of its side: the spot of its top piece is known from above, and one or two taps say how high over
// that spot its top shows.

import type { Result, Vec2 } from '@cairnmark/geometry';
import { dot3, failure, length3, sub3, success } from '@cairnmark/geometry';
import type { Camera } from '../camera/camera.ts';
import { imagePoint, positionOf, rayOf } from '../camera/camera.ts';
import type { FittedCamera } from '../camera/fitted-camera.ts';
import { CAMERA_UNKNOWNS, nudged, nudgeOf } from '../camera/model.ts';
import type { PhotoIssue } from '../issues.ts';
import { issue } from '../issues.ts';
import { leastSquares } from '../numbers/least-squares.ts';
import { cholesky, propagate, solveLower } from '../numbers/matrix.ts';
import { EXPECTED_HEIGHT_SIGMA_MM, LEAST_SIDE_TILT_RAD, MOST_TAP_OFF_SIGMAS } from '../tolerance.ts';
import type { Taps } from './fit-solid.ts';
import type { PlanPose } from './pose.ts';
import type { TopShape } from './top-shape.ts';
import { tapsFor, topPairs, topPoints } from './top-shape.ts';

export interface TopPiece {
  readonly shape: TopShape;
  readonly pose: PlanPose;
  /** Of x and y (mm), row by row: how well its spot is known from above. */
  readonly spotCovariance: readonly [number, number, number, number];
  /** Where it should be by the sizes of the pieces: where the search begins. */
  readonly stackedMm: number;
}

export interface MeasuredHeight {
  readonly heightMm: number;
  readonly sigmaMm: number;
  /** How far the taps are off what they should be on, at most, in their own deviations: how well the two photos agree. */
  readonly offSigmas: number;
  /**
   * How unlikely: the sum of squares of all that is off, in its deviations, and of the height beside what the pieces add up to. Two
   * corners one behind the other, or two pieces, can fit the same taps 17 mm apart; then the sizes of the pieces speak.
   */
  readonly misfit: number;
  /** Which points of the top (`topPoints`) were tapped, from left to right; none of a ball. */
  readonly ends: readonly number[];
}

/** The height of the highest point of the piece above the table. */
export function heightFromSide(
  camera: FittedCamera,
  piece: TopPiece,
  { pixels, sigmaPx }: Taps,
): Result<MeasuredHeight, PhotoIssue> {
  const least = tapsFor(piece.shape);
  if (pixels.length < least) {
    return failure([issue('taps-too-few', 'tap-again', ['taps'], { given: pixels.length, least })]);
  }
  if (camera.tiltRad < LEAST_SIDE_TILT_RAD) {
    const details = { tiltRad: camera.tiltRad, leastRad: LEAST_SIDE_TILT_RAD };
    return failure([issue('view-too-steep', 'photograph-from-side', [], details)]);
  }
  const taps = [...pixels].sort((a, b) => a[0] - b[0]);
  const points = topPoints(camera, piece.shape, piece.pose, piece.stackedMm);
  const pairs = piece.shape.kind === 'ball' ? [[]] : topPairs(camera, points);
  const fits = pairs.flatMap((pair) => {
    const fit = fitHeight(camera, piece, pair, taps, sigmaPx, piece.stackedMm);
    return fit === null ? [] : [fit];
  });
  const base = fits.sort((a, b) => a.misfit - b.misfit)[0];
  if (base === undefined) return failure([issue('tap-not-on-plane', 'tap-again', ['taps'])]);
  if (base.offSigmas > MOST_TAP_OFF_SIGMAS) {
    const details = { offPx: base.offSigmas * sigmaPx, mostPx: MOST_TAP_OFF_SIGMAS * sigmaPx };
    return failure([issue('taps-do-not-fit', 'tap-again', ['taps'], details)]);
  }
  const slopes = Float64Array.from({ length: CAMERA_UNKNOWNS }, (_, k) => {
    const step = NUDGE * nudgeOf(k);
    const there = fitHeight(nudged(camera, k, step), piece, base.ends, taps, sigmaPx, base.heightMm);
    return there === null ? 0 : (there.heightMm - base.heightMm) / step;
  });
  const fromCamera = propagate([slopes], camera.covariance)[0] ?? 0;
  return success({
    heightMm: base.heightMm,
    sigmaMm: Math.sqrt(base.sigmaMm ** 2 + fromCamera),
    offSigmas: base.offSigmas,
    misfit: base.misfit,
    ends: base.ends,
  });
}

/** See `pose-covariance.ts`. */
const NUDGE = 30;
/** mm: height, x, y. */
const STEPS: readonly number[] = [1e-3, 1e-3, 1e-3];

function fitHeight(
  camera: Camera,
  { shape, pose, spotCovariance, stackedMm }: TopPiece,
  pair: readonly number[],
  taps: readonly Vec2[],
  sigmaPx: number,
  startMm: number,
): MeasuredHeight | null {
  const lower = cholesky(Float64Array.from(spotCovariance), 2);
  if (lower === null) return null;
  const solution = leastSquares({
    start: [startMm, pose.xMm, pose.yMm],
    residuals: (p) => {
      const [topMm = 0, xMm = 0, yMm = 0] = p;
      const there = { ...pose, xMm, yMm };
      const spot = solveLower(lower, 2, [xMm - pose.xMm, yMm - pose.yMm]);
      return Float64Array.from([...tapsOff(camera, shape, pair, there, topMm, taps, sigmaPx), ...spot]);
    },
    measured: 0,
    steps: STEPS,
  });
  if (solution === null) return null;
  const heightMm = solution.parameters[0] ?? 0;
  const fromSizes = (heightMm - stackedMm) / EXPECTED_HEIGHT_SIGMA_MM;
  return {
    heightMm,
    sigmaMm: Math.sqrt(solution.covariance[0] ?? 0),
    offSigmas: Math.max(...Array.from(solution.residuals, Math.abs)),
    misfit: solution.residuals.reduce((sum, off) => sum + off * off, fromSizes * fromSizes),
    ends: pair,
  };
}

function tapsOff(
  camera: Camera,
  shape: TopShape,
  pair: readonly number[],
  pose: PlanPose,
  topMm: number,
  taps: readonly Vec2[],
  sigmaPx: number,
): readonly number[] {
  if (shape.kind === 'ball') return taps.map((tap) => ballOff(camera, shape.radiusMm, pose, topMm, tap) / sigmaPx);
  const points = topPoints(camera, shape, pose, topMm);
  return taps.flatMap((tap, k) => {
    // Of a tip every tap is on the same point; else the first half of the taps is at the left end.
    const point = points[pair[pair.length === 1 || k < taps.length / 2 ? 0 : 1] ?? -1];
    const shown = point === undefined ? null : imagePoint(camera, point);
    if (shown === null) return [Number.NaN, Number.NaN];
    return [(tap[0] - shown[0]) / sigmaPx, (tap[1] - shown[1]) / sigmaPx];
  });
}

/** How far over the ball the line of sight of the tap passes, px at its distance. */
function ballOff(camera: Camera, radiusMm: number, { xMm, yMm }: PlanPose, topMm: number, tap: Vec2): number {
  const away = sub3([xMm, yMm, topMm - radiusMm], positionOf(camera));
  const ray = rayOf(camera, tap);
  if (ray === null) return Number.NaN;
  const along = dot3(away, ray.along);
  const beside = Math.sqrt(Math.max(0, dot3(away, away) - along * along));
  return (camera.focalPx / length3(away)) * (beside - radiusMm);
}
