// Which pieces move as one when a build begins to move. Frame of the table, mm; accelerations in shares of gravity.

import { SAME_MOTION, STILL } from '../kernel/tolerance.ts';
import type { Vec3 } from '../kernel/vec.ts';
import { add3, cross3, length3, sub3 } from '../kernel/vec.ts';
import { bodyAt } from './equilibrium.ts';
import type { BodyMotion, FirstMotion } from './first-motion.ts';
import type { Patch, StaticProblem } from './types.ts';

/** Groups of moving bodies that share one motion across the patches between them, each in building order. */
export function lumpsOf(problem: StaticProblem, motion: FirstMotion): readonly (readonly number[])[] {
  const group = problem.bodies.map((_, i) => i);
  for (const patch of problem.patches) {
    if (patch.lower === 'table' || !moveAsOne(problem, motion, patch, patch.lower)) continue;
    const [from, to] = [group[patch.upper], group[patch.lower]];
    group.forEach((label, i) => {
      if (label === from && to !== undefined) group[i] = to;
    });
  }
  const moving = problem.bodies.flatMap((_, i) => (speedOf(problem, motion, i) > movingFrom(motion) ? [i] : []));
  return [...new Set(moving.map((i) => group[i]))].map((label) => moving.filter((i) => group[i] === label));
}

/** True when the two sides of a patch stay together at that point of it. */
export function staysTogether(problem: StaticProblem, motion: FirstMotion, patch: Patch, point: Vec3): boolean {
  return length3(slipAt(problem, motion, patch, point)) < movingFrom(motion);
}

function moveAsOne(problem: StaticProblem, motion: FirstMotion, patch: Patch, lower: number): boolean {
  const spin = length3(sub3(motionAt(motion, patch.upper).spinGPerMm, motionAt(motion, lower).spinGPerMm));
  const turnsAlike = spin * problem.sizeMm < movingFrom(motion);
  return turnsAlike && patch.points.every((point) => staysTogether(problem, motion, patch, point));
}

/** Acceleration of the upper body past the lower one at a point of their patch. */
function slipAt(problem: StaticProblem, motion: FirstMotion, patch: Patch, point: Vec3): Vec3 {
  const upper = accelerationAt(problem, motion, patch.upper, point);
  return patch.lower === 'table' ? upper : sub3(upper, accelerationAt(problem, motion, patch.lower, point));
}

function accelerationAt(problem: StaticProblem, motion: FirstMotion, index: number, point: Vec3): Vec3 {
  const { accelerationG, spinGPerMm } = motionAt(motion, index);
  return add3(accelerationG, cross3(spinGPerMm, sub3(point, bodyAt(problem, index).centre)));
}

function speedOf(problem: StaticProblem, motion: FirstMotion, index: number): number {
  const { accelerationG, spinGPerMm } = motionAt(motion, index);
  return Math.max(length3(accelerationG), length3(spinGPerMm) * bodyAt(problem, index).gyrationMm);
}

const movingFrom = (motion: FirstMotion): number => Math.max(STILL, SAME_MOTION * motion.worst);

function motionAt(motion: FirstMotion, index: number): BodyMotion {
  const body = motion.bodies[index];
  if (body === undefined) throw new RangeError(`no body ${index}`);
  return body;
}
