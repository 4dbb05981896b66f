// Whether a build stands at all, and whether it bears a given tilt in every direction: cheaper than its exact margin,
// and without a solver. For trying many layouts.

import type { Vec2 } from '../kernel/vec.ts';
import { bearsAllRound } from './all-round.ts';
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
  return bearsAllRound(problem, push, DIRECTIONS, first, limits);
}

const DIRECTIONS = 32;
