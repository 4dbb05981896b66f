// What goes first, or would: when a build falls, what falls; when it stands, what gives way just past its margin.

import { NO_MARGIN_RAD, PAST_MARGIN } from '../kernel/tolerance.ts';
import type { Vec2 } from '../kernel/vec.ts';
import { frictionCone } from './cone.ts';
import type { Failure } from './failures.ts';
import { failuresOfMotion, failuresOfTower, weakestJoints } from './failures.ts';
import { firstMotion } from './first-motion.ts';
import type { Judgement } from './judge.ts';
import type { WorkLimits } from './margin.ts';
import type { StaticProblem } from './types.ts';

export function firstToGo(problem: StaticProblem, judged: Judgement, limits: WorkLimits): readonly Failure[] {
  const { joints, motion, standsTo, stands } = judged;
  if (joints !== null) return stands === true ? weakestJoints(joints) : failuresOfTower(joints);
  if (motion !== null) return failuresOfMotion(problem, motion, null);
  if (standsTo === null) return [];
  const [x, y] = standsTo.direction;
  for (const more of PAST_MARGIN) {
    const past: Vec2 = [x * (standsTo.push + more), y * (standsTo.push + more)];
    const moving = firstMotion(problem, frictionCone(Math.atan2(y, x)), past, limits.pivots);
    const failures = moving === null ? [] : failuresOfMotion(problem, moving, standsTo.direction);
    if (failures.length > 0) return failures;
  }
  return [];
}

/** Pieces among those that touch with a curved surface, when the margin is none. */
export function rollingOf(
  problem: StaticProblem,
  { standsTo }: Judgement,
  first: readonly Failure[],
): readonly number[] {
  if (standsTo === null || Math.atan(standsTo.push) > NO_MARGIN_RAD) return [];
  const going = new Set(first.flatMap(({ pieces }) => pieces));
  const touching = problem.patches.filter(
    ({ upper, lower }) => going.has(upper) || (lower !== 'table' && going.has(lower)),
  );
  return [...new Set(touching.flatMap(({ rolling }) => rolling))].sort((a, b) => a - b);
}
