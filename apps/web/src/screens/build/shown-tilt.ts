// A tilt as the six numbers show it: cut like in the sentence above them (whole from 10 degrees on, a tenth below), so
// that one build does not slide at 21 degrees here and at 21.8 there.

const DEGREE_RAD = Math.PI / 180;

/** Degrees. The noise of margins, so that 45 is not cut to 44. */
const NOISE = 1e-4;

export function shownTiltRad(tiltRad: number): number {
  const degrees = tiltRad / DEGREE_RAD + NOISE;
  const steps = degrees < 10 ? 10 : 1;
  return (Math.floor(degrees * steps) / steps) * DEGREE_RAD;
}
