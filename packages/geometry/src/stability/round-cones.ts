// The least push where friction decides. The region of pushes that are borne is then round. The worst direction is found
// with many edges to every cone, to within their share of the round one; once more that way, with an edge of every cone on
// it, and their flat sides no longer show.

import { CONE_EDGES } from '../kernel/tolerance.ts';
import type { Vec2 } from '../kernel/vec.ts';
import { frictionCone } from './cone.ts';
import type { LinearModel, LinearSolver } from './linear-solver.ts';
import type { WorkLimits } from './margin.ts';
import { leastPush, marginOf, pushTowards } from './margin.ts';
import { PLAN, pushModel } from './push-models.ts';
import type { Margin, StaticProblem } from './types.ts';

/** `rows`: the equations that count. `borne`: pushes that are known to be borne. null: the work limits cut it off. */
export function leastOnRoundCones(
  problem: StaticProblem,
  solver: LinearSolver,
  limits: WorkLimits,
  rows: (model: LinearModel) => LinearModel,
  borne: Vec2[],
): Margin | null {
  const flat = marginOf(leastPush(rows(pushModel(problem, frictionCone(0), PLAN)), solver, limits, NEARLY, borne));
  if (flat === null) return null;
  const { direction } = flat;
  const cone = frictionCone(Math.atan2(direction[1], direction[0]));
  const round = marginOf(pushTowards(rows(pushModel(problem, cone, [direction])), solver, limits, direction));
  return round !== null && round.push > flat.push ? round : flat;
}

/** To what cones of CONE_EDGES can say of a round region. */
const NEARLY = 1 - Math.cos(Math.PI / CONE_EDGES);
