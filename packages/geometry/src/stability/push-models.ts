// Linear programmes about pushes: equilibrium on a level table with the pushes as free unknowns, in the last columns.

import type { Vec2 } from '../kernel/vec.ts';
import type { ConeChoice } from './cone.ts';
import { contactColumns, grippingColumns, weights, withPushes } from './equilibrium.ts';
import type { LinearModel } from './linear-solver.ts';
import type { StaticProblem } from './types.ts';

/** Pushes along x and along y. */
export const PLAN: readonly Vec2[] = [
  [1, 0],
  [0, 1],
];

/** Sliding counts. `along`: unit vectors of the plan. */
export function pushModel(problem: StaticProblem, cone: ConeChoice, along: readonly Vec2[]): LinearModel {
  const matrix = withPushes(contactColumns(problem, cone), along);
  return { matrix, right: weights(problem, LEVEL), free: along.length };
}

/** Sliding is left out. */
export function grippingModel(problem: StaticProblem): LinearModel {
  const { matrix, free } = grippingColumns(problem);
  return { matrix: withPushes(matrix, PLAN), right: weights(problem, LEVEL), free: free + PLAN.length };
}

/** No push: the table is level. */
const LEVEL: Vec2 = [0, 0];
