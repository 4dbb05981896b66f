// How near two towers, read once each, may be for a ruler that errs: the error of the difference of two readings.

import type { Challenge } from '@cairnmark/engine';
import { readingErrorMm } from '@cairnmark/engine';

/** Errors of two readings add as the root of the sum of squares; told in whole millimetres, upwards. */
export const errorOfDifferenceMm = (challenge: Pick<Challenge, 'measuringErrorMm' | 'ruler'>): number =>
  Math.ceil(Math.SQRT2 * readingErrorMm(challenge));
