// The push at which something slides when nothing can tip: the equations of equilibrium without the moments. The corners
// of a patch then bear all the same, so that one of them stands for all.

import { LEVEL_NORMAL } from '../kernel/tolerance.ts';
import type { Vec2 } from '../kernel/vec.ts';
import { forceRows } from './force-rows.ts';
import type { LinearSolver } from './linear-solver.ts';
import type { WorkLimits } from './margin.ts';
import { marginOf, pushTowards } from './margin.ts';
import { pushModel } from './push-models.ts';
import { leastOnRoundCones } from './round-cones.ts';
import type { Margin, StaticProblem } from './types.ts';

/** `towards`: the direction that is named where all are alike. null: the work limits cut it off. */
export function leastSlide(
  problem: StaticProblem,
  solver: LinearSolver,
  limits: WorkLimits,
  towards: Vec2,
): Margin | null {
  const { patches } = problem;
  const [first] = patches;
  const level = patches.every(({ normal }) => normal[2] >= LEVEL_NORMAL);
  // On level contacts of one friction the whole build slides at that friction.
  if (level && first !== undefined && patches.every(({ friction }) => friction === first.friction))
    return { push: first.friction, direction: towards };
  const once = { ...problem, patches: patches.map((patch) => ({ ...patch, points: patch.points.slice(0, 1) })) };
  if (!level) return leastOnRoundCones(once, solver, limits, forceRows, []);
  // Level contacts are the same from all sides: one direction, and friction along it, will do.
  const along = { edges: 2, turnRad: Math.atan2(towards[1], towards[0]) };
  return marginOf(pushTowards(forceRows(pushModel(once, along, [towards])), solver, limits, towards));
}
