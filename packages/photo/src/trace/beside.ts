// How deep traced pieces may stand in each other and still stand side by side.

import { BESIDE_MM, BESIDE_SIGMAS } from '../tolerance.ts';
import type { FittedSolid } from './fit-solid.ts';

/** mm. For pieces whose spots have these variances, mm2, each along the direction in which it is known least. */
export const besideMm = (...variancesMm2: readonly number[]): number =>
  BESIDE_MM + BESIDE_SIGMAS * Math.sqrt(variancesMm2.reduce((sum, variance) => sum + variance, 0));

/** mm2. The larger eigenvalue of the covariance of x and y. */
export function spotVariance({ covariance: c }: Pick<FittedSolid, 'covariance'>): number {
  const [xx, xy, yy] = [c[0] ?? 0, c[1] ?? 0, c[4] ?? 0];
  return (xx + yy) / 2 + Math.hypot((xx - yy) / 2, xy);
}
