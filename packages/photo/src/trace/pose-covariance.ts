// How well the place of a piece is known: by its taps and edges, by the camera, and by the height at which it stands. Source: GUM,
// JCGM 100:2008, 5.2 (law of propagation for correlated inputs; from memory).

import type { Camera } from '../camera/camera.ts';
import type { FittedCamera } from '../camera/fitted-camera.ts';
import { CAMERA_UNKNOWNS, nudged, nudgeOf } from '../camera/model.ts';
import { propagate } from '../numbers/matrix.ts';
import type { Figure } from './figure.ts';
import type { PoseFit, Sighting } from './pose-fit.ts';
import { fitPose } from './pose-fit.ts';

/** Covariance of x (mm), y (mm) and turn (rad), row by row. */
export function poseCovariance(
  camera: FittedCamera,
  figure: Figure,
  { bottomMm, bottomSigmaMm }: { readonly bottomMm: number; readonly bottomSigmaMm: number },
  fit: PoseFit,
  sightings: readonly Sighting[],
): Float64Array {
  const answer = (seenBy: Camera, bottom: number): readonly [number, number, number] => {
    const { pose } = fitPose(seenBy, figure, bottom, fit.pose, sightings) ?? fit;
    return [pose.xMm, pose.yMm, pose.turnRad];
  };
  const base = answer(camera, bottomMm);
  const columns = Array.from({ length: CAMERA_UNKNOWNS }, (_, k) => {
    const step = NUDGE * nudgeOf(k);
    return answer(nudged(camera, k, step), bottomMm).map((value, i) => (value - (base[i] ?? 0)) / step);
  });
  const jacobian = [0, 1, 2].map((row) => Float64Array.from(columns, (column) => column[row] ?? 0));
  const fromCamera = propagate(jacobian, camera.covariance);
  const byHeight = answer(camera, bottomMm + 1).map((value, i) => value - (base[i] ?? 0));
  return fit.covariance.map((own, at) => {
    const [row, column] = [Math.floor(at / 3), at % 3];
    return own + (fromCamera[at] ?? 0) + bottomSigmaMm ** 2 * (byHeight[row] ?? 0) * (byHeight[column] ?? 0);
  });
}

/** Wider than the steps of a derivative: the answer is itself a fit, known to some millionths. */
const NUDGE = 30;
