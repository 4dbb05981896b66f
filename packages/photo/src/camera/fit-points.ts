// The camera of a photo of any flat figure with known points: pose, focal length and lens. The same unknowns, priors and weights as
// for a ground sheet, without ink, so that the model can be tried on photographs of other things.

import type { Vec2 } from '@cairnmark/geometry';
import { leastSquares } from '../numbers/least-squares.ts';
import { BLOOM_SIGMA_PX, FIRST_CORNER_SIGMA_PX, K1_SIGMA } from '../tolerance.ts';
import type { Camera } from './camera.ts';
import { imagePoint } from './camera.ts';
import type { FitOptions } from './fit-camera.ts';
import { focalPrior } from './focal-prior.ts';
import { cameraWith, stepsOf, unknownsOf } from './model.ts';
import { startPose } from './start-pose.ts';

/** Points of a plane and where they show; as many of one as of the other, four at least, no three of those on a line. */
export interface SeenPoints {
  readonly widthPx: number;
  readonly heightPx: number;
  /** x, y of the table's frame, mm. */
  readonly onTableMm: readonly Vec2[];
  readonly pixels: readonly Vec2[];
}

/** Null where the points do not determine a camera. Source: Zhang 2000, 3.2, with priors (Gaussian) and Huber's weights. */
export function fitPoints(
  { widthPx, heightPx, onTableMm, pixels }: SeenPoints,
  { focal35Mm }: FitOptions,
): Camera | null {
  const focal = focalPrior(widthPx, heightPx, focal35Mm);
  const flat = ([u, v]: Vec2): Vec2 => [(u - widthPx / 2) / focal.focalPx, (v - heightPx / 2) / focal.focalPx];
  const pose = startPose(onTableMm, pixels.map(flat));
  if (pose === null) return null;
  const start: Camera = { widthPx, heightPx, focalPx: focal.focalPx, k1: 0, ...pose };
  const residuals = (unknowns: Float64Array): Float64Array => {
    const camera = cameraWith(start, unknowns);
    const off = onTableMm.flatMap(([x, y], k) => {
      const [u, v] = imagePoint(camera, [x, y, 0]) ?? [Number.NaN, Number.NaN];
      const [seenU, seenV] = pixels[k] ?? [Number.NaN, Number.NaN];
      return [(u - seenU) / FIRST_CORNER_SIGMA_PX, (v - seenV) / FIRST_CORNER_SIGMA_PX];
    });
    const [logFocal, k1, bloomPx] = unknowns.subarray(6);
    const known = [
      ((logFocal ?? 0) - Math.log(focal.focalPx)) / focal.sigmaShare,
      (k1 ?? 0) / K1_SIGMA,
      (bloomPx ?? 0) / BLOOM_SIGMA_PX,
    ];
    return Float64Array.from([...off, ...known]);
  };
  const measured = 2 * onTableMm.length;
  const solution = leastSquares({ start: unknownsOf(start, 0, []), residuals, measured, steps: stepsOf(0) });
  return solution && cameraWith(start, solution.parameters);
}
