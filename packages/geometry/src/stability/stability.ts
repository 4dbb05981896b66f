// Does a build stand, by how much, what goes first, and what would mend it. Solids are taken as stiff and unglued: if any
// set of pushes between them could hold the build up, it stands. Frame of the table; mm, grams, rad.

import type { Result } from '../kernel/result.ts';
import { success } from '../kernel/result.ts';
import { CONTACT_MM } from '../kernel/tolerance.ts';
import type { Stack, StackIssue } from '../stack/types.ts';
import type { Failure } from './failures.ts';
import type { JointMargin, Tilt } from './figures.ts';
import { jointMargin, tiltOf } from './figures.ts';
import { firstToGo, rollingOf } from './first-to-go.ts';
import type { Judgement } from './judge.ts';
import { judge } from './judge.ts';
import type { LinearSolver } from './linear-solver.ts';
import type { Mend } from './mend.ts';
import { holdingMove, steadyingMove } from './moves.ts';
import type { NotPredicted } from './not-predicted.ts';
import { notPredictedOf } from './not-predicted.ts';
import type { StabilityQuestion } from './question.ts';
import { pose } from './question.ts';
import { simplex } from './simplex.ts';
import type { StaticProblem } from './types.ts';
import type { Verdict } from './verdict.ts';
import { STEADY_RAD, verdictOf } from './verdict.ts';

export interface Stability {
  readonly verdict: Verdict;
  /** By the bare equations, without any band of doubt; null when the work limits cut the search off. */
  readonly stands: boolean | null;
  readonly method: Judgement['method'];
  /** The least tilt at which it tips with sliding left out; null with the next two when it falls or is not decided. */
  readonly tipsAt: Tilt | null;
  /** The least tilt at which it slides with tipping left out. */
  readonly slidesAt: Tilt | null;
  /** The tilt up to which it stands: the smaller of the two, or less where the build wedges itself apart. */
  readonly standsTo: Tilt | null;
  /** Every joint of a tower of level joints; null for other builds, whose joints share their loads. */
  readonly joints: readonly JointMargin[] | null;
  /** When it falls: what goes. When it stands: what gives way first just past its margin. */
  readonly first: readonly Failure[];
  /** Pieces among those that touch with a curved surface, when the margin is none. */
  readonly rolling: readonly number[];
  readonly notPredicted: readonly NotPredicted[];
  /** Wider than a contact, no wider than the slack: the upper piece is taken to rest on the lower one all the same. */
  readonly closedGaps: readonly CarriedGap[];
  /** When it falls: the shortest move that holds it; null when it stands or none was found. */
  readonly mend: Mend | null;
  /** When it stands by less than 10 degrees: the shortest move that gives 10; null otherwise or when none was found. */
  readonly steadyingMove: Mend | null;
}

export interface CarriedGap {
  readonly upper: number;
  readonly lower: number | 'table';
  readonly gapMm: number;
}

/** Bodies up to which the small solver of this package serves when none is handed in. */
export const SMALL_BUILD = 8;

/** Throws RangeError for no pieces at all: nothing was built. */
export function stabilityOf(question: StabilityQuestion): Result<Stability, StackIssue> {
  if (question.pieces.length === 0) throw new RangeError('no pieces: nothing to judge');
  const posed = pose(question, question.pieces);
  if (!posed.ok) return posed;
  const { problem } = posed.value;
  const solver = solverFor(question.solver, problem);
  const judged = judge(problem, solver, question.limits);
  const first = firstToGo(problem, judged, question.limits);
  const rolling = rollingOf(problem, judged, first);
  const notPredicted = notPredictedOf(question, posed.value);
  const mend = judged.stands === false ? holdingMove(question, posed.value, first) : null;
  const circumstances = {
    unpredictable: notPredicted.length > 0,
    rolls: rolling.length > 0,
    nearlyHeld: mend !== null && mend.byMm <= question.rulerStepMm,
    solverLoaded: solver !== null,
  };
  return success({
    verdict: verdictOf(judged, circumstances),
    stands: judged.stands,
    method: judged.method,
    tipsAt: tiltOf(judged.tips),
    slidesAt: tiltOf(judged.slides),
    standsTo: tiltOf(judged.standsTo),
    joints: judged.joints?.map(jointMargin) ?? null,
    first,
    rolling,
    notPredicted,
    closedGaps: closedGaps(posed.value.stack),
    mend,
    // What rolls goes on rolling wherever it is put.
    steadyingMove:
      isShaky(judged) && rolling.length === 0
        ? steadyingMove(question, posed.value, first, judged.standsTo?.direction ?? null)
        : null,
  });
}

/** The solver that judges this build; null when it is too large for the small one and none was handed in. */
export function solverFor(handedIn: LinearSolver | null, problem: StaticProblem): LinearSolver | null {
  return handedIn ?? (problem.bodies.length <= SMALL_BUILD ? simplex : null);
}

const closedGaps = ({ supports }: Stack): readonly CarriedGap[] =>
  supports
    .filter(({ closedMm }) => closedMm > CONTACT_MM)
    .map(({ upper, lower, closedMm }) => ({ upper, lower, gapMm: closedMm }));

const isShaky = ({ stands, standsTo }: Judgement): boolean =>
  stands === true && (standsTo === null || Math.atan(standsTo.push) < STEADY_RAD);
