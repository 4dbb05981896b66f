// Does it stand, and how far can it be tilted? Three facts: the push at which it tips with sliding left out, the push at
// which it slides, and the push up to which it stands. Towers of level joints are judged by recursion; bridges, forts and
// slanted contacts by least squares (stands or not) and linear programmes (how far). Statics of stiff, unglued bodies.

import { HANGING_MM, STILL } from '../kernel/tolerance.ts';
import type { Vec2 } from '../kernel/vec.ts';
import { frictionCone } from './cone.ts';
import type { FirstMotion } from './first-motion.ts';
import { firstMotion } from './first-motion.ts';
import type { LinearSolver } from './linear-solver.ts';
import type { WorkLimits } from './margin.ts';
import { smaller } from './margin.ts';
import { marginsByProgrammes } from './programmes.ts';
import type { Joint } from './recursion.ts';
import { jointsOfTree } from './recursion.ts';
import type { Margin, StaticProblem } from './types.ts';

export interface Judgement {
  /** By the bare equations, without any band of doubt. null: the work limit cut the search off. */
  readonly stands: boolean | null;
  readonly method: 'recursion' | 'least-squares-and-programmes';
  /** null when it falls, when the work limit cut the search off, or when a solver is needed and none is loaded. */
  readonly tips: Margin | null;
  readonly slides: Margin | null;
  readonly standsTo: Margin | null;
  /** The joints of a tower, in the order of the patches; null for other builds. */
  readonly joints: readonly Joint[] | null;
  /** How the bodies begin to move when it does not stand; null when it stands or was judged by recursion. */
  readonly motion: FirstMotion | null;
}

/** `solver` null: none is loaded; builds that need one then get their verdict, but no margins. */
export function judge(problem: StaticProblem, solver: LinearSolver | null, limits: WorkLimits): Judgement {
  const joints = jointsOfTree(problem);
  return joints === null ? judgeByProgrammes(problem, solver, limits) : judgeTower(joints);
}

/** Any build, without the fast path. */
export function judgeByProgrammes(problem: StaticProblem, solver: LinearSolver | null, limits: WorkLimits): Judgement {
  const method = 'least-squares-and-programmes';
  const none = { method, ...NO_MARGINS, joints: null } as const;
  const motion = firstMotion(problem, frictionCone(0), LEVEL, limits.pivots);
  if (motion === null) return { stands: null, ...none, motion };
  if (motion.worst > STILL) return { stands: false, ...none, motion };
  if (solver === null) return { stands: true, ...none, motion: null };
  return { stands: true, method, ...marginsByProgrammes(problem, solver, limits), joints: null, motion: null };
}

/** No push: the table is level. */
const LEVEL: Vec2 = [0, 0];
const NO_MARGINS = { tips: null, slides: null, standsTo: null };

function judgeTower(joints: readonly Joint[]): Judgement {
  const tips = joints.map((joint) => joint.tips).reduce(smaller);
  const slides = joints.map(({ patch, outward }) => ({ push: patch.friction, direction: outward })).reduce(smaller);
  const stands = joints.every(({ insideMm }) => insideMm >= -HANGING_MM);
  const margins = stands ? { tips, slides, standsTo: smaller(tips, slides) } : NO_MARGINS;
  return { stands, method: 'recursion', ...margins, joints, motion: null };
}
