// A listed piece in a photo from above: two taps on its corners, or three on its rim, and its place and turn are known, with how
// well. Its size is the listed one; what the photo adds is where it stands.

import type { Resting, Result, Solid, Vec2 } from '@cairnmark/geometry';
import { failure, placePiece, success } from '@cairnmark/geometry';
import type { Camera } from '../camera/camera.ts';
import { planePoint } from '../camera/camera.ts';
import type { FittedCamera } from '../camera/fitted-camera.ts';
import type { Photo } from '../image/photo.ts';
import type { PhotoIssue } from '../issues.ts';
import { issue } from '../issues.ts';
import { huberLoss } from '../numbers/least-squares.ts';
import {
  LEAST_TAP_DISTANCE_PX,
  MOST_CHOICE_SIGMAS,
  MOST_TAP_OFF_SIGMAS,
  SAME_POSE_PX,
  SUPPORT_WORTH,
} from '../tolerance.ts';
import { bodySupport } from './body-support.ts';
import type { Figure } from './figure.ts';
import { figureOf } from './figure.ts';
import { firstPoses } from './first-poses.ts';
import type { PlanPose } from './pose.ts';
import { poseCovariance } from './pose-covariance.ts';
import type { PoseFit, Sighting } from './pose-fit.ts';
import { fitPose } from './pose-fit.ts';
import type { Snapped } from './snap.ts';
import { snap } from './snap.ts';

/** What is known of the piece before the taps. */
export interface ListedPiece {
  readonly solid: Solid;
  readonly resting: Resting;
  /** How high it stands, from what is below it, and the standard deviation of that. */
  readonly bottomMm: number;
  readonly bottomSigmaMm: number;
  /** The taps are on the face that it stands on, since something hides its top. Absent: where `figureOf` says. */
  readonly by?: 'base';
}

export interface Taps {
  /** px. Corners of the figure (see `figureOf`), at least two, or places round its rim, at least three. */
  readonly pixels: readonly Vec2[];
  /** How well they are set, px: 2 with a loupe. */
  readonly sigmaPx: number;
}

export interface FittedSolid {
  readonly pose: PlanPose;
  /** Of x (mm), y (mm) and turn (rad), row by row, the camera's own uncertainty and that of its height included. */
  readonly covariance: Float64Array;
  /** Whether edges of the photo were used beside the taps, and along which share of the outline they show. */
  readonly snapped: boolean;
  readonly support: number;
  /** Share of all its edges, those inside the outline too, that the photo shows where they should be: what ways are chosen by. */
  readonly evidence: number;
  /** How far the taps are off the piece as they alone set it, at most, in their own deviations. */
  readonly offSigmas: number;
  /** Other ways in which a piece of this size fits the taps, the next likely first. */
  readonly otherWays: readonly PlanPose[];
}

/** `photo`: null sets the piece by its taps alone. */
export function fitSolid(
  photo: Photo | null,
  camera: FittedCamera,
  piece: ListedPiece,
  taps: Taps,
): Result<FittedSolid, PhotoIssue> {
  const figure = figureOf(piece.solid, piece.resting, piece.by);
  if (figure === null) return failure([issue('nothing-to-tap', 'trace-freely')]);
  const fault = tapFault(camera, figure, piece.bottomMm, taps);
  if (fault !== null) return failure([fault]);
  const starts = figure.kind === 'corners' || figure.kind === 'log' ? byCorners : byRim;
  const choices = starts(camera, figure, piece.bottomMm, taps);
  const best = choices[0];
  if (best === undefined || best.offSigmas > MOST_TAP_OFF_SIGMAS) {
    const details = { offPx: (best?.offSigmas ?? 0) * taps.sigmaPx, mostPx: MOST_TAP_OFF_SIGMAS * taps.sigmaPx };
    return failure([issue('taps-do-not-fit', 'tap-again', ['taps'], details)]);
  }
  const ways = choices
    .filter(({ offSigmas }) => offSigmas <= Math.max(best.offSigmas, MOST_CHOICE_SIGMAS))
    .map(({ fit, sightings, offSigmas }) => {
      const set = withEdges(photo, camera, figure, piece.bottomMm, fit, sightings);
      return { ...set, offSigmas, evidence: evidenceOf(photo, camera, piece, set) };
    })
    .sort((a, b) => worth(b) - worth(a));
  const [chosen, ...others] = ways;
  if (chosen === undefined) return failure([issue('taps-do-not-fit', 'tap-again', ['taps'])]);
  return success({
    pose: chosen.fit.pose,
    covariance: poseCovariance(camera, figure, piece, chosen.fit, chosen.sightings),
    snapped: chosen.snapped,
    support: chosen.support,
    evidence: chosen.evidence,
    offSigmas: chosen.offSigmas,
    otherWays: others.map(({ fit }) => fit.pose),
  });
}

/** How well a way to lie fits: by the edges that the photo shows, and by its taps. */
export const worth = ({ evidence, offSigmas }: Pick<FittedSolid, 'evidence' | 'offSigmas'>): number =>
  SUPPORT_WORTH * evidence - huberLoss(offSigmas);

function evidenceOf(photo: Photo | null, camera: Camera, piece: ListedPiece, { fit, support }: Snapped): number {
  if (photo === null) return 0;
  const laid = { kind: piece.solid.id, resting: piece.resting.id, ...fit.pose };
  const body = bodySupport(photo, camera, placePiece({ laid, ...piece }, 0, piece.bottomMm));
  return body === null ? support : (support + body) / 2;
}

function tapFault(camera: Camera, figure: Figure, bottomMm: number, { pixels }: Taps): PhotoIssue | null {
  const least = figure.kind === 'corners' || figure.kind === 'log' ? 2 : 3;
  if (pixels.length < least) return issue('taps-too-few', 'tap-again', ['taps'], { given: pixels.length, least });
  for (const [k, pixel] of pixels.entries()) {
    if (planePoint(camera, pixel, bottomMm) === null) return issue('tap-not-on-plane', 'tap-again', ['taps', k]);
    const near = pixels.findIndex(
      (other, j) => j < k && Math.hypot(other[0] - pixel[0], other[1] - pixel[1]) < LEAST_TAP_DISTANCE_PX,
    );
    if (near >= 0) {
      return issue('taps-too-near', 'tap-again', ['taps', k], { other: near, leastPx: LEAST_TAP_DISTANCE_PX });
    }
  }
  return null;
}

interface Choice {
  readonly fit: PoseFit;
  readonly sightings: readonly Sighting[];
  /** How far the taps are off at most, in their own deviations. */
  readonly offSigmas: number;
}

function byCorners(camera: Camera, figure: Figure, bottomMm: number, { pixels, sigmaPx }: Taps): readonly Choice[] {
  return firstPoses(camera, figure, bottomMm, pixels, SAME_POSE_PX).flatMap(({ pose, corners }) => {
    const sightings = pixels.map(
      (pixel, k): Sighting => ({ pixel, on: { kind: 'corner', corner: corners[k] ?? 0 }, sigmaPx }),
    );
    if (new Set(corners).size < 2) return [];
    const fit = fitPose(camera, figure, bottomMm, pose, sightings);
    return fit === null ? [] : [{ fit, sightings, offSigmas: fit.offSigmas }];
  });
}

function byRim(camera: Camera, figure: Figure, bottomMm: number, { pixels, sigmaPx }: Taps): readonly Choice[] {
  if (figure.kind !== 'disc' && figure.kind !== 'ball') return [];
  const points = pixels.flatMap((pixel) => {
    const point = planePoint(camera, pixel, bottomMm + figure.centre[2]);
    return point === null ? [] : [point];
  });
  const mean = (k: 0 | 1): number =>
    points.reduce((sum, point) => sum + point[k], 0) / points.length - figure.centre[k];
  const start = { xMm: mean(0), yMm: mean(1), turnRad: 0 };
  const sightings = pixels.map((pixel): Sighting => ({ pixel, on: { kind: 'rim' }, sigmaPx }));
  const fit = fitPose(camera, figure, bottomMm, start, sightings);
  return fit === null ? [] : [{ fit, sightings, offSigmas: fit.offSigmas }];
}

const withEdges = (
  photo: Photo | null,
  camera: Camera,
  figure: Figure,
  bottomMm: number,
  fit: PoseFit,
  taps: readonly Sighting[],
): Snapped =>
  photo === null
    ? { fit, sightings: taps, support: 0, snapped: false }
    : snap(photo, camera, figure, bottomMm, fit, taps);
