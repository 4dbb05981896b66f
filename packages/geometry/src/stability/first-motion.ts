// How a build begins to move when it cannot stand: the contact forces, never pulling and within their friction cones,
// that leave the least motion in the sense of Gauss's principle of least constraint (sum of mass x acceleration squared).
// What no force can hold is each body's first acceleration, in shares of gravity. A build that can stand leaves nothing.

import type { Vec2, Vec3 } from '../kernel/vec.ts';
import { coneEdges } from './cone.ts';
import type { ConeChoice } from './equilibrium.ts';
import { bodyAt, contactColumns, ROWS_PER_BODY, weights } from './equilibrium.ts';
import { leastSquares } from './least-squares.ts';
import type { SparseColumns } from './sparse-columns.ts';
import type { StaticProblem } from './types.ts';

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
  const matrix = scaled(contactColumns(problem, cone), scale);
  const right = weights(problem, push).map((value, row) => value * (scale[row] ?? 1));
  const answer = leastSquares(matrix, right, stepLimit);
  if (!answer.finished) return null;
  const bodies = problem.bodies.map((_, i) => motionOf(problem, i, answer.residual, scale));
  const worst = bodies.reduce((most, body, i) => {
    const turning = Math.hypot(...body.spinGPerMm) * bodyAt(problem, i).gyrationMm;
    return Math.max(most, Math.hypot(...body.accelerationG), turning);
  }, 0);
  return { bodies, worst, pressedG: pressed(problem, cone, answer.x) };
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

function scaled(matrix: SparseColumns, scale: Float64Array): SparseColumns {
  return { ...matrix, value: matrix.value.map((value, k) => value * (scale[matrix.index[k] ?? 0] ?? 1)) };
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

function pressed(problem: StaticProblem, cone: ConeChoice, forces: Float64Array): readonly (readonly number[])[] {
  let column = 0;
  return problem.patches.map((patch) => {
    const edges = coneEdges(patch.normal, cone.friction ?? patch.friction, cone.edges, cone.turnRad).length;
    return patch.points.map(() => {
      let sum = 0;
      for (let k = 0; k < edges; k += 1) sum += forces[column + k] ?? 0;
      column += edges;
      return sum;
    });
  });
}
