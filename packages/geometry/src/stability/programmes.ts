// The three margins of any build by linear programmes: tipping with sliding left out, sliding with tipping left out, and
// both together. Cones of friction have flat sides in a programme; the answers are those of the round ones to 0.1 degrees.

import { COARSE_EDGES, CONE_EDGES, LEVEL_NORMAL, SAME_MARGIN } from '../kernel/tolerance.ts';
import type { Vec2 } from '../kernel/vec.ts';
import type { ConeChoice } from './equilibrium.ts';
import { contactColumns, weights, withPushes } from './equilibrium.ts';
import { forceRows } from './force-rows.ts';
import type { LinearModel, LinearSolver } from './linear-solver.ts';
import type { Enough, MarginAnswer, WorkLimits } from './margin.ts';
import { leastPush, pushTowards, smaller } from './margin.ts';
import type { Margin, StaticProblem } from './types.ts';

export interface Margins {
  readonly tips: Margin | null;
  readonly slides: Margin | null;
  readonly standsTo: Margin | null;
}

/** Of a build that stands; each null when the work limits cut the search off. */
export function marginsByProgrammes(problem: StaticProblem, solver: LinearSolver, limits: WorkLimits): Margins {
  const tips = marginOf(leastPush(pushModel(problem, GRIPPING, PLAN), solver, limits, EXACTLY));
  const slides = leastSlide(problem, solver, limits, tips);
  return { tips, slides, standsTo: leastOfAll(problem, solver, limits, tips, slides) };
}

/** Sliding counts; one edge of every cone points along `turnRad` in plan. */
export const frictionCone = (turnRad: number): ConeChoice => ({ edges: CONE_EDGES, turnRad, friction: null });

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

/** No push: the table is level. */
const LEVEL: Vec2 = [0, 0];
const PLAN: readonly Vec2[] = [
  [1, 0],
  [0, 1],
];
/** Sliding left out. */
const GRIPPING: ConeChoice = { edges: COARSE_EDGES, turnRad: 0, friction: Number.POSITIVE_INFINITY };
/** Sliding counts, in a hurry. */
const COARSE: ConeChoice = { edges: COARSE_EDGES, turnRad: 0, friction: null };
/** What a coarse cone holds of the round one at least; less a little for rounding. */
const COARSE_SHARE = Math.cos(Math.PI / COARSE_EDGES) - 1e-9;
/** To the last edge of the region. */
const EXACTLY: Enough = { push: Number.POSITIVE_INFINITY, gain: 0 };
/** To what cones of CONE_EDGES can say of a round region. */
const NEARLY: Enough = { push: Number.POSITIVE_INFINITY, gain: 1 - Math.cos(Math.PI / CONE_EDGES) };

function pushModel(problem: StaticProblem, cone: ConeChoice, along: readonly Vec2[]): LinearModel {
  const matrix = withPushes(contactColumns(problem, cone), along);
  return { matrix, right: weights(problem, LEVEL), free: along.length };
}

/** Least squares said that it stands; a programme that finds no room at all then means a margin of 0. */
function marginOf(answer: MarginAnswer): Margin | null {
  if (answer.kind === 'margin') return answer.margin;
  return answer.kind === 'falls' ? { push: 0, direction: [1, 0] } : null;
}

/** On level contacts of one friction the whole build slides at that friction, whatever way; else by its force rows. */
function leastSlide(
  problem: StaticProblem,
  solver: LinearSolver,
  limits: WorkLimits,
  tips: Margin | null,
): Margin | null {
  const { patches } = problem;
  const [first] = patches;
  const alike = patches.every(({ normal, friction }) => normal[2] >= LEVEL_NORMAL && friction === first?.friction);
  if (alike && first !== undefined) return { push: first.friction, direction: tips?.direction ?? [1, 0] };
  return leastOnRoundCones(problem, solver, limits, forceRows);
}

/**
 * The smaller of tipping and sliding, unless the build wedges itself apart earlier. Coarse cones alone make it at most
 * cos(pi / COARSE_EDGES) of the two. When they bear that much, and the whole once turned to the two directions where it
 * is least certain, there is no third figure.
 */
function leastOfAll(
  problem: StaticProblem,
  solver: LinearSolver,
  limits: WorkLimits,
  tips: Margin | null,
  slides: Margin | null,
): Margin | null {
  if (tips === null || slides === null) return null;
  const least = smaller(tips, slides);
  const enough = { ...EXACTLY, push: least.push * COARSE_SHARE };
  const coarse = leastPush(pushModel(problem, COARSE, PLAN), solver, limits, enough);
  if (coarse.kind === 'not-decided') return null;
  const bearsIt = (direction: Vec2): boolean => {
    const turned = { ...COARSE, turnRad: Math.atan2(direction[1], direction[0]) };
    const bears = marginOf(pushTowards(pushModel(problem, turned, [direction]), solver, limits, direction));
    return bears !== null && bears.push >= least.push * (1 - SAME_MARGIN);
  };
  if (coarse.kind === 'enough' && bearsIt(least.direction) && bearsIt(coarse.direction)) return least;
  const wedged = leastOnRoundCones(problem, solver, limits, (model) => model);
  return wedged && smaller(least, wedged);
}

/**
 * The least push where friction decides. The region of pushes is then round: the worst direction is found with many
 * edges to every cone, to within their share of the round one; once more that way, with an edge of every cone on it, and
 * their flat sides no longer show.
 */
function leastOnRoundCones(
  problem: StaticProblem,
  solver: LinearSolver,
  limits: WorkLimits,
  rows: (model: LinearModel) => LinearModel,
): Margin | null {
  const flat = marginOf(leastPush(rows(pushModel(problem, frictionCone(0), PLAN)), solver, limits, NEARLY));
  if (flat === null) return null;
  const { direction } = flat;
  const cone = frictionCone(Math.atan2(direction[1], direction[0]));
  const round = marginOf(pushTowards(rows(pushModel(problem, cone, [direction])), solver, limits, direction));
  return round !== null && round.push > flat.push ? round : flat;
}
