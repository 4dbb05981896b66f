// How good a photo is to measure by, in one word.

import type { FittedCamera } from '@cairnmark/photo';
import type { View } from './tracing.ts';

/** A photo with a camera; one without is to be taken again. */
export type Quality = 'good' | 'fair';

export function qualityOf(view: View, { markers, focalSigmaShare, tiltRad }: FittedCamera, most: number): Quality {
  const [least, highest] = TILTS[view];
  const isAimed = tiltRad >= least && tiltRad <= highest;
  const isFull = markers.length >= ENOUGH_SHARE * most;
  return isAimed && isFull && focalSigmaShare <= SURE_SHARE ? 'good' : 'fair';
}

/** From where a photo was taken, whatever it is taken for. */
export const looksLike = ({ tiltRad }: FittedCamera): View => (tiltRad > HALF_WAY ? 'side' : 'above');

/** How far a photo from the side was taken over the table, rad. */
export const upOf = ({ tiltRad }: FittedCamera): number => Math.PI / 2 - tiltRad;

const DEGREE = Math.PI / 180;

/** rad off straight down: between the steepest photo from above that is good, and the flattest one from the side. */
const HALF_WAY = 47 * DEGREE;

/** rad off straight down: 10 to 30 degrees from above, 5 to 25 degrees over the table from the side, with a little slack. */
const TILTS: Readonly<Record<View, readonly [number, number]>> = {
  above: [8 * DEGREE, 33 * DEGREE],
  side: [62 * DEGREE, 87 * DEGREE],
};
/** A tower hides one or two of eight. */
const ENOUGH_SHARE = 0.5;
/** No unit: 2 % of the focal length is 2 % of every height. */
const SURE_SHARE = 0.02;
