// The lens: radial distortion by one term, k1, in units of the focal length.

import type { Vec2 } from '@cairnmark/geometry';

export function distort(k1: number, [x, y]: Vec2): Vec2 {
  const factor = 1 + k1 * (x * x + y * y);
  return [x * factor, y * factor];
}

/** The inverse, by Newton's method on the distance from the middle; null where no distance is seen so far out. */
export function undistort(k1: number, [x, y]: Vec2): Vec2 | null {
  const seen = Math.hypot(x, y);
  if (seen === 0) return [0, 0];
  let away = seen;
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const slope = 1 + 3 * k1 * away * away;
    // Past its fold the lens model brings points back in: nothing is seen there.
    if (slope <= 0) return null;
    const step = (away * (1 + k1 * away * away) - seen) / slope;
    away -= step;
    if (Math.abs(step) <= ROUNDING * seen) return [(x * away) / seen, (y * away) / seen];
  }
  return null;
}

/** Newton's method doubles the digits with each round: six do for any picture. */
const MOST_ROUNDS = 30;
const ROUNDING = 1e-14;
