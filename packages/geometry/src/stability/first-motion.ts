// How a build begins to move when it cannot stand: the contact forces, never pulling and within their friction cones,
// that leave the least motion in the sense of Gauss's principle of least constraint (sum of mass x acceleration squared).
// What no force can hold is each body's first acceleration, in shares of gravity. A build that can stand leaves nothing.

import type { Vec2, Vec3 } from '../kernel/vec.ts';
import { dot3 } from '../kernel/vec.ts';
import type { ConeChoice } from './cone.ts';
import { alongSurface } from './cone.ts';
import type { Corner } from './cone-columns.ts';
import { ConeColumns } from './cone-columns.ts';
import { bodyAt, ROWS_PER_BODY, weights, writeForce } from './equilibrium.ts';
import { leastSquares } from './least-squares.ts';
import { ColumnWriter } from './sparse-columns.ts';
import type { Patch, StaticProblem } from './types.ts';

export interface BodyMotion {
  /** Acceleration of the centre of mass, in shares of gravity. */
  readonly accelerationG: Vec3;
  /** Angular acceleration, in shares of gravity per mm. */
  readonly spinGPerMm: Vec3;
}

export interface FirstMotion {
  readonly bodies: readonly BodyMotion[];
  /** The greatest acceleration of any body, turning counted at its radius of gyration; shares of gravity. */
  readonly worst: number;
  /** Force at each corner of each patch, grams of weight, in the order of patches and corners. */
  readonly pressedG: readonly (readonly number[])[];
}

/** The motion under a sideways push (a share of gravity; [0, 0] on a level table). null when the step limit cut it off. */
export function firstMotion(
  problem: StaticProblem,
  cone: ConeChoice,
  push: Vec2,
  stepLimit: number,
): FirstMotion | null {
  const scale = rowScale(problem);
  const columns = coneColumns(problem, cone, push, scale);
  const right = weights(problem, push).map((value, row) => value * (scale[row] ?? 1));
  const answer = leastSquares(columns, right, stepLimit);
  if (!answer.finished) return null;
  const bodies = problem.bodies.map((_, i) => motionOf(problem, i, answer.residual, scale));
  const worst = bodies.reduce((most, body, i) => {
    const turning = Math.hypot(...body.spinGPerMm) * bodyAt(problem, i).gyrationMm;
    return Math.max(most, Math.hypot(...body.accelerationG), turning);
  }, 0);
  return { bodies, worst, pressedG: pressed(problem, columns, answer.x) };
}

/** Rows weighed by the square root of mass, moments by that of the moment of inertia. */
function rowScale(problem: StaticProblem): Float64Array {
  const total = problem.bodies.reduce((sum, body) => sum + body.massG, 0);
  return Float64Array.from({ length: problem.bodies.length * ROWS_PER_BODY }, (_, row) => {
    const body = bodyAt(problem, Math.floor(row / ROWS_PER_BODY));
    const share = Math.sqrt(body.massG / total);
    return row % ROWS_PER_BODY < 3 ? share : (share * problem.sizeMm) / body.gyrationMm;
  });
}

function coneColumns(problem: StaticProblem, cone: ConeChoice, push: Vec2, scale: Float64Array): ConeColumns {
  const frames = new ColumnWriter(scale.length);
  const corners: Corner[] = [];
  for (const patch of problem.patches) {
    const [first, second] = alongSurface(patch.normal, cone.turnRad);
    const corner = { friction: patch.friction, pull: pullOn(patch, first, second, push) };
    for (const point of patch.points) {
      for (const force of [patch.normal, first, second]) writeForce(frames, problem, patch, point, force);
      corners.push(corner);
    }
  }
  const matrix = frames.finish();
  const value = matrix.value.map((entry, k) => entry * (scale[matrix.index[k] ?? 0] ?? 1));
  return new ConeColumns(corners, { ...matrix, value }, cone.edges);
}

/** What bears the tilted weight straight on a surface, or as nearly so as its friction allows. */
function pullOn({ normal, friction }: Patch, first: Vec3, second: Vec3, push: Vec2): Vec2 {
  const weight: Vec3 = [-push[0], -push[1], 1];
  const [x, y] = [dot3(weight, first), dot3(weight, second)];
  const along = Math.hypot(x, y);
  const pressing = dot3(weight, normal);
  const share = along <= friction * pressing ? 1 / pressing : friction / along;
  return along === 0 ? [0, 0] : [share * x, share * y];
}

function motionOf(problem: StaticProblem, index: number, residual: Float64Array, scale: Float64Array): BodyMotion {
  const body = bodyAt(problem, index);
  // The residual is what of the weight is not carried: it points up where the body falls.
  const at = (k: number): number => {
    const row = index * ROWS_PER_BODY + k;
    return -(residual[row] ?? 0) / (scale[row] ?? 1);
  };
  const turn = problem.sizeMm / body.gyrationMm ** 2;
  return { accelerationG: [at(0), at(1), at(2)], spinGPerMm: [at(3) * turn, at(4) * turn, at(5) * turn] };
}

/** All columns have normal part 1: what a corner bears is the sum of their amounts. */
function pressed(
  { patches }: StaticProblem,
  columns: ConeColumns,
  amounts: ReadonlyMap<number, number>,
): readonly (readonly number[])[] {
  const byCorner = new Map<number, number>();
  for (const [column, amount] of amounts) {
    const corner = columns.cornerOf(column);
    byCorner.set(corner, (byCorner.get(corner) ?? 0) + amount);
  }
  let corner = 0;
  return patches.map(({ points }) => points.map(() => byCorner.get(corner++) ?? 0));
}
