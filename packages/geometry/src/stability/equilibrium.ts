// Equilibrium of all bodies as linear equations: six rows a body (force x, y, z; moment x, y, z about its own centre of
// mass), one column for each edge of a friction cone at each corner of each patch. Rows are divided by the body's own
// weight and moments by the size of the build, so that a feather and a brick are judged alike.
// Frame of the table; unknowns are forces in grams of weight, never negative.

import type { Vec2, Vec3 } from '../kernel/vec.ts';
import { cross3, scale3, sub3 } from '../kernel/vec.ts';
import { coneEdges } from './cone.ts';
import type { SparseColumns } from './sparse-columns.ts';
import { ColumnWriter, entriesOf } from './sparse-columns.ts';
import type { BodyMass, Patch, StaticProblem } from './types.ts';

export const ROWS_PER_BODY = 6;

export interface ConeChoice {
  /** How many edges stand for the round cone of friction. */
  readonly edges: number;
  /** One edge points this way in plan, rad. */
  readonly turnRad: number;
  /** Replaces the friction of every patch; null keeps each patch's own. */
  readonly friction: number | null;
}

/** What the contacts can do: one column for each edge of each cone. */
export function contactColumns(problem: StaticProblem, cone: ConeChoice): SparseColumns {
  const columns = new ColumnWriter(problem.bodies.length * ROWS_PER_BODY);
  for (const patch of problem.patches) {
    const directions = coneEdges(patch.normal, cone.friction ?? patch.friction, cone.edges, cone.turnRad);
    for (const point of patch.points) {
      for (const force of directions) writeForce(columns, problem, patch, point, force);
    }
  }
  return columns.finish();
}

/** The same with more columns: free sideways pushes, each along a unit vector of the plan, that act on every body. */
export function withPushes(contacts: SparseColumns, along: readonly Vec2[]): SparseColumns {
  const columns = new ColumnWriter(contacts.rows);
  for (let column = 0; column < contacts.columns; column += 1) {
    for (const { row, value } of entriesOf(contacts, column)) columns.put(row, value);
    columns.close();
  }
  for (const [x, y] of along) {
    for (let row = 0; row < contacts.rows; row += ROWS_PER_BODY) {
      columns.put(row, x);
      columns.put(row + 1, y);
    }
    columns.close();
  }
  return columns.finish();
}

/** Right-hand side: what the contacts have to give each body, its weight upward and the push on it back. */
export function weights(problem: StaticProblem, push: Vec2): Float64Array {
  const right = new Float64Array(problem.bodies.length * ROWS_PER_BODY);
  for (let row = 0; row < right.length; row += ROWS_PER_BODY) right.set([-push[0], -push[1], 1], row);
  return right;
}

function writeForce(columns: ColumnWriter, problem: StaticProblem, patch: Patch, point: Vec3, force: Vec3): void {
  putWrench(columns, problem, patch.upper, point, force);
  if (patch.lower !== 'table') putWrench(columns, problem, patch.lower, point, scale3(force, -1));
  columns.close();
}

function putWrench(columns: ColumnWriter, problem: StaticProblem, index: number, point: Vec3, force: Vec3): void {
  const body = bodyAt(problem, index);
  const moment = cross3(sub3(point, body.centre), force);
  const row = index * ROWS_PER_BODY;
  const share = 1 / body.massG;
  force.forEach((component, axis) => {
    columns.put(row + axis, component * share);
  });
  moment.forEach((component, axis) => {
    columns.put(row + 3 + axis, (component * share) / problem.sizeMm);
  });
}

export function bodyAt(problem: StaticProblem, index: number): BodyMass {
  const body = problem.bodies[index];
  if (body === undefined) throw new RangeError(`no body ${index}`);
  return body;
}
