// The two moves that are offered: the one that holds a build that falls, and the one that makes a shaky build steady.

import type { Vec2 } from '../kernel/vec.ts';
import { bearsTilt, standsLevel } from './bears.ts';
import type { Failure } from './failures.ts';
import type { Mend } from './mend.ts';
import { shortestMend } from './mend.ts';
import { couldMeet } from './neighbours.ts';
import { lookAt } from './over-ground.ts';
import type { Posed, StabilityQuestion } from './question.ts';
import { pose } from './question.ts';
import { jointsOfTree } from './recursion.ts';
import type { Shift } from './shift-range.ts';
import { ANY_SHIFT, shiftRange } from './shift-range.ts';
import type { StaticProblem } from './types.ts';
import { STEADY_RAD } from './verdict.ts';

/** The shortest move after which the build stands; only pieces that fall are taken hold of. */
export function holdingMove(question: StabilityQuestion, posed: Posed, failures: readonly Failure[]): Mend | null {
  return shortest(question, posed, failures, 0, (problem) => standsLevel(problem, question.limits));
}

/** The shortest move after which it bears 10 degrees all round; only pieces that give way first are taken hold of. */
export function steadyingMove(
  question: StabilityQuestion,
  posed: Posed,
  failures: readonly Failure[],
  worst: Vec2 | null,
): Mend | null {
  if (worst === null) return null;
  const push = Math.tan(STEADY_RAD);
  return shortest(question, posed, failures, push, (problem) => bearsTilt(problem, STEADY_RAD, worst, question.limits));
}

function shortest(
  question: StabilityQuestion,
  { stack, problem }: Posed,
  failures: readonly Failure[],
  push: number,
  good: (problem: StaticProblem) => boolean | null,
): Mend | null {
  const joints = jointsOfTree(problem);
  const lumps = [problem.bodies.map((_, index) => index), ...failures.map(({ pieces }) => pieces)];
  const looks = lumps.flatMap((pieces) => lookAt(stack, problem, pieces, push) ?? []);
  const candidates = [...new Set(failures.flatMap(({ pieces }) => pieces))].sort((a, b) => a - b);
  const search = {
    pieces: question.pieces,
    stack,
    candidates,
    rulerStepMm: question.rulerStepMm,
    furthestMm: problem.sizeMm / 2,
    rangeOf: (shift: Shift) => (joints === null ? ANY_SHIFT : shiftRange({ stack, problem, joints }, shift, push)),
    meets: (moved: readonly number[]) => couldMeet(stack, moved, question.slackMm),
    couldHelp: (shift: Shift, byMm: number) => looks.every((look) => look(shift, byMm)),
    trials: question.limits.trials,
  };
  return shortestMend(search, (pieces) => {
    const moved = pose(question, pieces);
    return moved.ok ? { stack: moved.value.stack, isGood: () => good(moved.value.problem) === true } : null;
  });
}
