// When nothing wedges. On level contacts let every corner press along the pull of the tilted weight: a push p leans all
// those forces alike, so that friction bears them as long as p is no longer than the coefficient, and only moments are
// left to be balanced. They grow with p times the lever of each piece: its load times its height. If each piece goes on
// carrying what it carries on the level table, the levers stand fast, and the pushes that are borne form a convex region
// with one unknown a corner. As far as it reaches in all directions, friction does nothing worse than let slide.

import { LEVEL_NORMAL } from '../kernel/tolerance.ts';
import type { Vec2, Vec3 } from '../kernel/vec.ts';
import { sub3 } from '../kernel/vec.ts';
import { bodyAt } from './equilibrium.ts';
import { evenShares } from './even-shares.ts';
import type { LinearModel, LinearSolver } from './linear-solver.ts';
import type { WorkLimits } from './margin.ts';
import { leastPush, marginOf } from './margin.ts';
import type { SparseColumns } from './sparse-columns.ts';
import { addColumn, ColumnWriter } from './sparse-columns.ts';
import type { Margin, StaticProblem } from './types.ts';

/**
 * How hard the build can be pushed without any thrust, friction being enough: no more than it bears at all. `borne` takes
 * the pushes that were found to be borne. null: contacts slant, or the work limits cut the search off.
 */
export function leastWithoutThrust(
  problem: StaticProblem,
  solver: LinearSolver,
  limits: WorkLimits,
  borne: Vec2[],
): Margin | null {
  if (problem.patches.some(({ normal }) => normal[2] < LEVEL_NORMAL)) return null;
  return marginOf(leastPush(leverModel(problem), solver, limits, TO_THE_LAST_EDGE, borne));
}

const TO_THE_LAST_EDGE = 0;

/** The region of pushes for the levers of the level table. */
function leverModel(problem: StaticProblem): LinearModel {
  const count = problem.bodies.length;
  const corners = new ColumnWriter(4 * count);
  writeCorners(corners, problem);
  const level = corners.finish();
  const right = new Float64Array(4 * count);
  right.fill(1, 2 * count, 3 * count);
  const shares = evenShares(level, right.subarray(0, 3 * count));
  const levers = leversOf(level, shares);
  right.set(levers, 3 * count);
  for (const axis of [0, 1]) {
    levers.forEach((lever, i) => {
      corners.put(axis * count + i, lever);
    });
    corners.close();
  }
  return { matrix: corners.finish(), right, free: 2 };
}

/**
 * A column for each corner that presses straight up: what it adds to the moments of the bodies about y, then about x, to
 * their loads, and to their levers; all for unit weights and lengths, as in the equations of equilibrium.
 */
function writeCorners(columns: ColumnWriter, problem: StaticProblem): void {
  const count = problem.bodies.length;
  const put = (index: number, point: Vec3, sign: number): void => {
    const { centre, massG } = bodyAt(problem, index);
    const [x, y, z] = sub3(point, centre);
    const share = sign / massG;
    columns.put(index, (x * share) / problem.sizeMm);
    columns.put(count + index, (y * share) / problem.sizeMm);
    columns.put(2 * count + index, share);
    columns.put(3 * count + index, (z * share) / problem.sizeMm);
  };
  for (const { upper, lower, points } of problem.patches) {
    for (const point of points) {
      put(upper, point, 1);
      if (lower !== 'table') put(lower, point, -1);
      columns.close();
    }
  }
}

/** The last quarter of the rows. */
function leversOf(level: SparseColumns, shares: Float64Array): Float64Array {
  const sums = new Float64Array(level.rows);
  shares.forEach((share, corner) => {
    addColumn(sums, level, corner, share);
  });
  return sums.subarray((3 * level.rows) / 4);
}
