// How near two towers, read once each, may be for a ruler that errs: the error of the difference of two readings.

/** Readings of a ruler are off by no less than what its divisions leave open (JCGM 100:2008, F.2.2.1; from memory). */
export function errorOfDifferenceMm(readingErrorMm: number, stepMm: number): number {
  const oneMm = Math.max(readingErrorMm, (2 * stepMm) / Math.sqrt(12));
  // Errors of two readings add as the root of the sum of squares; told in whole millimetres, upwards.
  return Math.ceil(Math.SQRT2 * oneMm);
}
