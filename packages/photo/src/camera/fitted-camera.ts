// A camera with all that is known of how well it is known.

import type { Camera } from './camera.ts';
import type { PagePlace } from './sheet.ts';

export interface FittedCamera extends Camera {
  /** px by which edges of ink are seen further inwards. */
  readonly bloomPx: number;
  /**
   * Covariance of pose, focal length and lens, 8 by 8, row by row: a turn of the camera's frame (3, rad), the move (3, mm),
   * the logarithm of the focal length, k1.
   */
  readonly covariance: Float64Array;
  /** Root mean square of what is left between the sheet and the picture, px. */
  readonly rmsPx: number;
  /** Standard deviation of the focal length, as a share of it. */
  readonly focalSigmaShare: number;
  readonly tiltRad: number;
  readonly places: readonly PagePlace[];
  /** Ids of the markers that it stands on, and of those left out because they do not lie where the others say. */
  readonly markers: readonly number[];
  readonly strays: readonly number[];
}

/** What a fit gives before it is judged. */
export interface RawFit {
  readonly camera: Camera;
  readonly bloomPx: number;
  readonly places: readonly PagePlace[];
  /** Of all unknowns, `size` by `size`. */
  readonly covariance: Float64Array;
  readonly size: number;
  /** px left of every measured coordinate. */
  readonly offPx: Float64Array;
  readonly sigmaPx: number;
  readonly focalPriorShare: number;
  readonly strays: readonly number[];
}
