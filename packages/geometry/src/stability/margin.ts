// How hard a build can be pushed, over all directions. The pushes it can bear form a convex region of the plane of
// pushes. Its reach in a direction is one linear programme. From four reaches on, the region is enclosed between the
// polygon of the points found (inside) and their supporting lines (outside): the nearest edge of the inner polygon is
// always tried next, until it is a true edge. The answer is the exact least push, not the least over a fan of rays.

import type { Vec2 } from '../kernel/vec.ts';
import { dot2 } from '../kernel/vec.ts';
import { nearestSide } from './inner-polygon.ts';
import type { LinearModel, LinearSession, LinearSolver } from './linear-solver.ts';
import type { Margin } from './types.ts';

/** No unit (a share of gravity): the gain that is always enough, what the solvers' rounding leaves. */
const LEAST_GAIN = 1e-9;

/** Work handed in by the caller: the same input stops at the same place on every machine. */
export interface WorkLimits {
  /** Linear programmes for one margin. */
  readonly solves: number;
  /** Pivots of one linear programme, steps of one least-squares search. */
  readonly pivots: number;
  /** Layouts that are tried in search of a mending move. */
  readonly trials: number;
}

export type MarginAnswer =
  | { readonly kind: 'margin'; readonly margin: Margin }
  | { readonly kind: 'falls' }
  | { readonly kind: 'not-decided' };

/**
 * The least push in any direction. `model`: the last two columns are the free pushes along x and along y. `gain`: an edge
 * counts as a true one when the region reaches no further past it than this share of its distance; 0: to the last edge.
 * `corners`: pushes that are known to be borne, from which the search sets out when they span a polygon; those that it
 * finds are added.
 */
export function leastPush(
  model: LinearModel,
  solver: LinearSolver,
  limits: WorkLimits,
  gain: number,
  corners: Vec2[],
): MarginAnswer {
  const session = solver.open(model);
  try {
    const first = nearestSide(corners).ofPolygon ? [] : FIRST;
    for (let solves = 0; solves < limits.solves; solves += 1) {
      const side = nearestSide(corners);
      const normal = first[solves] ?? side.normal;
      const point = furthest(session, model, normal, limits.pivots);
      if (point === 'infeasible') return { kind: 'falls' };
      if (point === 'limit') return { kind: 'not-decided' };
      if (solves >= first.length && dot2(point, normal) <= side.distance + Math.max(LEAST_GAIN, gain * side.distance)) {
        if (side.distance < -LEAST_GAIN) return { kind: 'falls' };
        return { kind: 'margin', margin: { push: Math.max(0, side.distance), direction: normal } };
      }
      corners.push(point);
    }
    return { kind: 'not-decided' };
  } finally {
    session.close();
  }
}

/** The push in one direction of a build that stands without any. `model`: its last column is the free push that way. */
export function pushTowards(
  model: LinearModel,
  solver: LinearSolver,
  limits: WorkLimits,
  direction: Vec2,
): MarginAnswer {
  const session = solver.open(model);
  try {
    const goal = new Float64Array(model.matrix.columns);
    goal[goal.length - 1] = 1;
    const { status, values } = session.maximise(goal, limits.pivots);
    if (status === 'infeasible') return { kind: 'falls' };
    if (status !== 'optimal') return { kind: 'not-decided' };
    return { kind: 'margin', margin: { push: Math.max(0, values[goal.length - 1] ?? 0), direction } };
  } finally {
    session.close();
  }
}

/** Of a build that stands: a programme that finds no room at all then means a margin of 0. null: not decided. */
export function marginOf(answer: MarginAnswer): Margin | null {
  if (answer.kind === 'margin') return answer.margin;
  return answer.kind === 'falls' ? { push: 0, direction: [1, 0] } : null;
}

/** The margin with the smaller push; the first of two equal ones. */
export const smaller = (a: Margin, b: Margin): Margin => (b.push < a.push ? b : a);

const FIRST: readonly Vec2[] = [
  [1, 0],
  [0, 1],
  [-1, 0],
  [0, -1],
];

/** The corner of the region furthest along `normal`. */
function furthest(
  session: LinearSession,
  model: LinearModel,
  normal: Vec2,
  pivotLimit: number,
): Vec2 | 'infeasible' | 'limit' {
  const goal = new Float64Array(model.matrix.columns);
  const [x, y] = [goal.length - 2, goal.length - 1];
  goal[x] = normal[0];
  goal[y] = normal[1];
  const answer = session.maximise(goal, pivotLimit);
  if (answer.status === 'infeasible') return 'infeasible';
  if (answer.status !== 'optimal') return 'limit';
  return [answer.values[x] ?? 0, answer.values[y] ?? 0];
}
