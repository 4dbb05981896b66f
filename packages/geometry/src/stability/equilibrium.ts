// Equilibrium of all bodies as linear equations: six rows a body (force x, y, z; moment x, y, z about its own centre of
// mass), one column for each edge of a friction cone at each corner of each patch. Rows are divided by the body's own
// weight and moments by the size of the build, so that a feather and a brick are judged alike.
// Frame of the table; unknowns are forces in grams of weight, never negative.

import type { Vec2, Vec3 } from '../kernel/vec.ts';
import { cross3, scale3, sub3 } from '../kernel/vec.ts';
import type { ConeChoice } from './cone.ts';
import { alongSurface, coneEdges } from './cone.ts';
import type { SparseColumns } from './sparse-columns.ts';
import { ColumnWriter, sideBySide } from './sparse-columns.ts';
import type { BodyMass, Patch, StaticProblem } from './types.ts';

export const ROWS_PER_BODY = 6;

/** What the contacts can do: one column for each edge of each cone. */
export function contactColumns(problem: StaticProblem, cone: ConeChoice): SparseColumns {
  const columns = new ColumnWriter(problem.bodies.length * ROWS_PER_BODY);
  for (const patch of problem.patches) {
    const directions = coneEdges(patch.normal, patch.friction, cone);
    for (const point of patch.points) {
      for (const force of directions) writeForce(columns, problem, patch, point, force);
    }
  }
  return columns.finish();
}

/**
 * What the contacts can do when nothing slides: a push along the normal at each corner, and for each patch any force along
 * its surface and, unless it is a single point, any twist about its normal. The last `free` columns may have either sign.
 */
export function grippingColumns(problem: StaticProblem): { readonly matrix: SparseColumns; readonly free: number } {
  const columns = new ColumnWriter(problem.bodies.length * ROWS_PER_BODY);
  for (const patch of problem.patches) {
    for (const point of patch.points) writeForce(columns, problem, patch, point, patch.normal);
  }
  let free = 0;
  for (const patch of problem.patches) {
    const [point, another] = patch.points;
    if (point === undefined) continue;
    for (const force of alongSurface(patch.normal, 0)) writeForce(columns, problem, patch, point, force);
    if (another !== undefined) writeTwist(columns, problem, patch);
    free += another === undefined ? 2 : 3;
  }
  return { matrix: columns.finish(), free };
}

/** The same with more columns: free sideways pushes, each along a unit vector of the plan, that act on every body. */
export function withPushes(contacts: SparseColumns, along: readonly Vec2[]): SparseColumns {
  const pushes = new ColumnWriter(contacts.rows);
  for (const [x, y] of along) {
    for (let row = 0; row < contacts.rows; row += ROWS_PER_BODY) {
      pushes.put(row, x);
      pushes.put(row + 1, y);
    }
    pushes.close();
  }
  return sideBySide(contacts, pushes.finish());
}

/** Right-hand side: what the contacts have to give each body, its weight upward and the push on it back. */
export function weights(problem: StaticProblem, push: Vec2): Float64Array {
  const right = new Float64Array(problem.bodies.length * ROWS_PER_BODY);
  for (let row = 0; row < right.length; row += ROWS_PER_BODY) right.set([-push[0], -push[1], 1], row);
  return right;
}

/** A force of the lower body on the upper one at a point of their patch: a column with the moments of both. */
export function writeForce(
  columns: ColumnWriter,
  problem: StaticProblem,
  patch: Patch,
  point: Vec3,
  force: Vec3,
): void {
  putWrench(columns, problem, patch.upper, point, force);
  if (patch.lower !== 'table') putWrench(columns, problem, patch.lower, point, scale3(force, -1));
  columns.close();
}

/** A moment about the normal of a patch. */
function writeTwist(columns: ColumnWriter, problem: StaticProblem, { upper, lower, normal }: Patch): void {
  putMoment(columns, problem, upper, scale3(normal, problem.sizeMm));
  if (lower !== 'table') putMoment(columns, problem, lower, scale3(normal, -problem.sizeMm));
  columns.close();
}

function putWrench(columns: ColumnWriter, problem: StaticProblem, index: number, point: Vec3, force: Vec3): void {
  const body = bodyAt(problem, index);
  force.forEach((component, axis) => {
    columns.put(index * ROWS_PER_BODY + axis, component / body.massG);
  });
  putMoment(columns, problem, index, cross3(sub3(point, body.centre), force));
}

function putMoment(columns: ColumnWriter, problem: StaticProblem, index: number, moment: Vec3): void {
  const { massG } = bodyAt(problem, index);
  moment.forEach((component, axis) => {
    columns.put(index * ROWS_PER_BODY + 3 + axis, component / massG / problem.sizeMm);
  });
}

export function bodyAt(problem: StaticProblem, index: number): BodyMass {
  const body = problem.bodies[index];
  if (body === undefined) throw new RangeError(`no body ${index}`);
  return body;
}
