// The three margins of any build by linear programmes: tipping with sliding left out, sliding with tipping left out, and
// both together. Cones of friction have flat sides in a programme; the answers are those of the round ones to 0.1 degrees.

import { COARSE_EDGES, UNSEEN_RAD, UNSEEN_SHARE } from '../kernel/tolerance.ts';
import type { Vec2 } from '../kernel/vec.ts';
import { bearsAllRound } from './all-round.ts';
import { frictionCone } from './cone.ts';
import type { LinearSolver } from './linear-solver.ts';
import type { WorkLimits } from './margin.ts';
import { leastPush, marginOf, pushTowards, smaller } from './margin.ts';
import { grippingModel, PLAN, pushModel } from './push-models.ts';
import { leastOnRoundCones } from './round-cones.ts';
import { leastSlide } from './sliding.ts';
import type { Margin, StaticProblem } from './types.ts';
import { leastWithoutThrust } from './without-thrust.ts';

export interface Margins {
  readonly tips: Margin | null;
  readonly slides: Margin | null;
  readonly standsTo: Margin | null;
}

/** Of a build that stands; each null when the work limits cut the search off. */
export function marginsByProgrammes(problem: StaticProblem, solver: LinearSolver, limits: WorkLimits): Margins {
  const borne: Vec2[] = [];
  const upright = leastWithoutThrust(problem, solver, limits, borne);
  const tips = marginOf(leastPush(grippingModel(problem), solver, limits, EXACTLY, borne));
  const slides = leastSlide(problem, solver, limits, tips?.direction ?? [1, 0]);
  if (tips === null || slides === null) return { tips, slides, standsTo: null };
  const least = smaller(tips, slides);
  const grips = problem.patches.every(({ friction }) => friction >= least.push);
  const nothingWedges = grips && upright !== null && upright.push >= least.push * (1 - UNSEEN_SHARE);
  return { tips, slides, standsTo: nothingWedges ? least : leastOfAll(problem, solver, limits, least) };
}

/** The push that a build which stands can bear in one direction (a unit vector), from one linear programme. */
export function marginTowards(
  problem: StaticProblem,
  solver: LinearSolver,
  limits: WorkLimits,
  direction: Vec2,
): Margin | null {
  const cone = frictionCone(Math.atan2(direction[1], direction[0]));
  return marginOf(pushTowards(pushModel(problem, cone, [direction]), solver, limits, direction));
}

/** To the last edge of the region. */
const EXACTLY = 0;

/**
 * The smaller of tipping and sliding, unless the build wedges itself apart earlier. Many builds bear that much all round;
 * of the others coarse cones bound the region from inside before round ones are asked.
 */
function leastOfAll(problem: StaticProblem, solver: LinearSolver, limits: WorkLimits, least: Margin): Margin | null {
  const push = least.push * (1 - UNSEEN_SHARE);
  if (push === 0) return least;
  const bears = bearsAllRound(problem, push, directionsFor(least.push), least.direction, limits);
  if (bears !== false) return bears && least;
  const borne: Vec2[] = [];
  leastPush(pushModel(problem, { edges: COARSE_EDGES, turnRad: 0 }, PLAN), solver, limits, EXACTLY, borne);
  const wedged = leastOnRoundCones(problem, solver, limits, (model) => model, borne);
  return wedged && smaller(least, wedged);
}

/** How many pushes, evenly spread and smaller by UNSEEN_SHARE, hold between them all pushes that are smaller by UNSEEN_RAD. */
function directionsFor(push: number): number {
  const inside = Math.tan(Math.atan(push) - UNSEEN_RAD) / (push * (1 - UNSEEN_SHARE));
  return Math.max(4, Math.ceil(Math.PI / Math.acos(Math.max(0, inside))));
}
