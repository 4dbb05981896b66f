// Whether a build bears a push in every direction, by least squares. What it bears is convex: where it bears the corners
// of a polygon, it bears all that lies inside.

import { STILL } from '../kernel/tolerance.ts';
import type { Vec2 } from '../kernel/vec.ts';
import { frictionCone } from './cone.ts';
import { firstMotion } from './first-motion.ts';
import type { WorkLimits } from './margin.ts';
import type { StaticProblem } from './types.ts';

/**
 * Whether it bears that push (a share of gravity) in `directions` directions, evenly spread from `first` on. null when the
 * work limit cut it off before it was decided.
 */
export function bearsAllRound(
  problem: StaticProblem,
  push: number,
  directions: number,
  first: Vec2,
  limits: WorkLimits,
): boolean | null {
  const start = Math.atan2(first[1], first[0]);
  for (let k = 0; k < directions; k += 1) {
    const angle = start + (2 * Math.PI * k) / directions;
    const at: Vec2 = [push * Math.cos(angle), push * Math.sin(angle)];
    const motion = firstMotion(problem, frictionCone(angle), at, limits.pivots);
    if (motion === null) return null;
    if (motion.worst > STILL) return false;
  }
  return true;
}
