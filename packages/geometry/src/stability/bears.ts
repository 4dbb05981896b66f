// Whether a build stands at all, and whether it bears a given tilt in every direction: cheaper than its exact margin,
// and without a solver. For trying many layouts.

import { STILL } from '../kernel/tolerance.ts';
import type { Vec2 } from '../kernel/vec.ts';
import { frictionCone } from './cone.ts';
import { firstMotion } from './first-motion.ts';
import { judge } from './judge.ts';
import type { WorkLimits } from './margin.ts';
import { jointsOfTree } from './recursion.ts';
import type { StaticProblem } from './types.ts';

/** The raw verdict on a level table; null when the work limit cut it off. */
export function standsLevel(problem: StaticProblem, limits: WorkLimits): boolean | null {
  return judge(problem, null, limits).stands;
}

/**
 * Whether it bears a tilt in all directions. What a build bears is convex: it bears the tilt all round when it bears the
 * corners of a polygon around the circle, 0.5 % longer pushes. `first`: the direction that is likely to fail.
 */
export function bearsTilt(problem: StaticProblem, tiltRad: number, first: Vec2, limits: WorkLimits): boolean | null {
  if (jointsOfTree(problem) !== null) return (judge(problem, null, limits).standsTo?.push ?? -1) >= Math.tan(tiltRad);
  const push = Math.tan(tiltRad) / Math.cos(Math.PI / DIRECTIONS);
  const start = Math.atan2(first[1], first[0]);
  for (let k = 0; k < DIRECTIONS; k += 1) {
    const angle = start + (2 * Math.PI * k) / DIRECTIONS;
    const motion = firstMotion(
      problem,
      frictionCone(angle),
      [push * Math.cos(angle), push * Math.sin(angle)],
      limits.pivots,
    );
    if (motion === null) return null;
    if (motion.worst > STILL) return false;
  }
  return true;
}

const DIRECTIONS = 32;
