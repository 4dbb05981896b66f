// The edge or point that pieces turn over, and how far past it their common centre of mass lies. Frame of the table, mm.

import type { Vec2, Vec3 } from '../kernel/vec.ts';
import { add3, dot2, length2, scale2, scale3, sub2, unsigned2, unsigned3 } from '../kernel/vec.ts';
import { bodyAt } from './equilibrium.ts';
import type { StaticProblem } from './types.ts';

export interface Hinge {
  /** Two ends of the edge, or the same point twice. */
  readonly ends: readonly [Vec3, Vec3];
  /** Unit vector in plan, square to the edge: the way they go. */
  readonly towards: Vec2;
  /** How far the common centre of mass lies past the hinge on a level table, mm; negative when it lies inside. */
  readonly pastMm: number;
}

/** `towards`: roughly where they go, in plan; null: to the side of the edge on which their centre of mass lies. */
export function hingeOver(ends: readonly [Vec3, Vec3], centre: Vec3, towards: Vec2 | null): Hinge {
  const [from, to] = [planOf(ends[0]), planOf(ends[1])];
  const out = sub2(planOf(centre), from);
  const across = acrossOf(sub2(to, from), towards ?? out);
  const pastMm = dot2(out, across);
  const forward = towards === null ? pastMm : dot2(towards, across);
  return forward < 0 ? hinge(ends, scale2(across, -1), -pastMm) : hinge(ends, across, pastMm);
}

/** Without a minus in front of a zero: files have none. */
export const hinge = (ends: Hinge['ends'], towards: Vec2, pastMm: number): Hinge => ({
  ends: [unsigned3(ends[0]), unsigned3(ends[1])],
  towards: unsigned2(towards),
  pastMm: pastMm + 0,
});

/** The common centre of mass of some bodies. */
export function centreOf(problem: StaticProblem, pieces: Iterable<number>): Vec3 {
  let massG = 0;
  let moment: Vec3 = [0, 0, 0];
  for (const index of pieces) {
    const body = bodyAt(problem, index);
    massG += body.massG;
    moment = add3(moment, scale3(body.centre, body.massG));
  }
  return scale3(moment, 1 / massG);
}

const planOf = (point: Vec3): Vec2 => [point[0], point[1]];

/** Square to the edge; over a single point, straight where they go. */
function acrossOf(along: Vec2, goes: Vec2): Vec2 {
  const [length, far] = [length2(along), length2(goes)];
  if (length > 0) return [along[1] / length, -along[0] / length];
  return far > 0 ? scale2(goes, 1 / far) : [1, 0];
}
