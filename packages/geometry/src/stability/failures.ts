// What goes first: the pieces that begin to move as one, what they rest on, and the hinge they turn over.

import { HANGING_MM, SAME_MARGIN } from '../kernel/tolerance.ts';
import type { Vec2, Vec3 } from '../kernel/vec.ts';
import { length3, sub3 } from '../kernel/vec.ts';
import { bodyAt } from './equilibrium.ts';
import type { FirstMotion } from './first-motion.ts';
import type { Hinge } from './hinge.ts';
import { centreOf, hinge, hingeOver } from './hinge.ts';
import { lumpsOf, staysTogether } from './lumps.ts';
import type { Joint } from './recursion.ts';
import type { Patch, StaticProblem } from './types.ts';

export interface Failure {
  /** Pieces that move together, in building order. */
  readonly pieces: readonly number[];
  /** What they leave: the piece under the hinge, or the first they rest on; null when nothing is under them. */
  readonly on: number | 'table' | null;
  /** What they turn over; null when they slide off or drop without turning over anything. */
  readonly hinge: Hinge | null;
}

/** For a tower of level joints that falls: the highest joints whose load hangs over. */
export function failuresOfTower(joints: readonly Joint[]): readonly Failure[] {
  const failing = joints.filter((joint) => joint.insideMm < -HANGING_MM);
  const highest = failing.filter(
    (joint) => !failing.some((other) => other !== joint && joint.above.includes(other.patch.upper)),
  );
  return highest.map(tippingOver);
}

/**
 * For a tower of level joints that stands: the joints that give way first. Where friction decides, all that would slide
 * together are told together; of joints that tip alike, those that carry the most.
 */
export function weakestJoints(joints: readonly Joint[]): readonly Failure[] {
  const push = (joint: Joint): number => Math.min(joint.tips.push, joint.patch.friction);
  const least = Math.min(...joints.map(push)) * (1 + SAME_MARGIN);
  const weakest = joints.filter((joint) => push(joint) <= least);
  const lowest = weakest.filter(
    (joint) => !weakest.some((other) => other !== joint && other.above.includes(joint.patch.upper)),
  );
  const tipping = lowest.filter(({ tips, patch }) => tips.push <= patch.friction);
  if (tipping.length > 0) return tipping.map(tippingOver);
  const grounds = [...new Set(lowest.map(({ patch }) => patch.lower))];
  return grounds.map((on) => {
    const sliding = lowest.filter(({ patch }) => patch.lower === on);
    return { pieces: inOrder(sliding.flatMap(({ above }) => above)), on, hinge: null };
  });
}

/** For any build: from the way it begins to move. `push`: where it was pushed to make it move, if it was. */
export function failuresOfMotion(problem: StaticProblem, motion: FirstMotion, push: Vec2 | null): readonly Failure[] {
  return lumpsOf(problem, motion).map((pieces) => {
    const lump = new Set(pieces);
    const under = problem.patches
      .map((patch, k) => ({ patch, pressedG: motion.pressedG[k] ?? [] }))
      .filter(({ patch }) => lump.has(patch.upper) && (patch.lower === 'table' || !lump.has(patch.lower)));
    for (const { patch, pressedG } of under) {
      const ends = stillPressed(problem, motion, patch, pressedG);
      if (ends === null) continue;
      return { pieces, on: patch.lower, hinge: hingeOver(ends, centreOf(problem, pieces), push) };
    }
    return { pieces, on: under[0]?.patch.lower ?? null, hinge: null };
  });
}

function tippingOver({ above, patch, edge, outward, insideMm }: Joint): Failure {
  return { pieces: inOrder(above), on: patch.lower, hinge: hinge(edge, outward, -insideMm) };
}

const inOrder = (pieces: readonly number[]): readonly number[] => [...pieces].sort((a, b) => a - b);

/** Share of a piece's weight. A corner that carries less does not count as pressed. */
const PRESSED = 1e-6;

/** The two corners furthest apart that stay together while the rest lifts off, or null when nothing presses there. */
function stillPressed(
  problem: StaticProblem,
  motion: FirstMotion,
  patch: Patch,
  pressedG: readonly number[],
): readonly [Vec3, Vec3] | null {
  const enoughG = PRESSED * bodyAt(problem, patch.upper).massG;
  const resting = patch.points
    .map((point, i) => ({ point, presses: (pressedG[i] ?? 0) > enoughG }))
    .filter(({ point }) => staysTogether(problem, motion, patch, point));
  const [first] = resting;
  if (first === undefined || !resting.some(({ presses }) => presses)) return null;
  const from = first.point;
  const points = resting.map(({ point }) => point);
  return [from, points.reduce((far, p) => (length3(sub3(p, from)) > length3(sub3(far, from)) ? p : far))];
}
