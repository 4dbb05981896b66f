// Two further questions about a build, asked one at a time: how far does it bear a tilt in this direction, and what
// happens when this piece is taken out?

import type { Result } from '../kernel/result.ts';
import { success } from '../kernel/result.ts';
import type { Vec2 } from '../kernel/vec.ts';
import type { StackIssue } from '../stack/types.ts';
import { standsLevel } from './bears.ts';
import type { Failure } from './failures.ts';
import type { Tilt } from './figures.ts';
import { tiltOf } from './figures.ts';
import { firstToGo, rollingOf } from './first-to-go.ts';
import { judge } from './judge.ts';
import { notPredictedOf } from './not-predicted.ts';
import { marginTowards } from './programmes.ts';
import type { StabilityQuestion } from './question.ts';
import { pose, posedAs } from './question.ts';
import { jointsOfTree, pushTowardsOfTree } from './recursion.ts';
import { solverFor } from './stability.ts';
import { stackWithout } from './stack-without.ts';
import type { Verdict } from './verdict.ts';
import { verdictOf } from './verdict.ts';

/**
 * The tilt it bears in one direction (a unit vector in plan, downhill); null when it falls, is not predicted or was not
 * decided.
 */
export function tiltTowards(question: StabilityQuestion, direction: Vec2): Result<Tilt | null, StackIssue> {
  const posed = pose(question, question.pieces);
  if (!posed.ok) return posed;
  const { problem } = posed.value;
  if (notPredictedOf(question, posed.value).length > 0) return success(null);
  if (standsLevel(problem, question.limits) !== true) return success(null);
  const joints = jointsOfTree(problem);
  if (joints !== null) return success(tiltOf({ push: pushTowardsOfTree(joints, direction), direction }));
  const solver = solverFor(question.solver, problem);
  return success(solver === null ? null : tiltOf(marginTowards(problem, solver, question.limits, direction)));
}

export interface WithoutPiece {
  readonly verdict: Verdict;
  /** By the bare equations; null when the work limits cut the search off. */
  readonly stands: boolean | null;
  /** What goes when it does not stand; indices as in the whole build. */
  readonly first: readonly Failure[];
}

/**
 * The verdict when one piece is taken away and all others keep their places. A piece that rested on it alone has nothing
 * under it any more, and falls.
 */
export function withoutPiece(question: StabilityQuestion, piece: number): Result<WithoutPiece, StackIssue> {
  const whole = pose(question, question.pieces);
  if (!whole.ok) return whole;
  const rest = { ...question, pieces: question.pieces.filter((_, i) => i !== piece) };
  const posed = posedAs(rest, rest.pieces, stackWithout(whole.value.stack, piece));
  const { problem } = posed;
  if (problem.bodies.length === 0) return success({ verdict: 'steady', stands: true, first: [] });
  const solver = solverFor(question.solver, problem);
  const judged = judge(problem, solver, question.limits);
  const failures = firstToGo(problem, judged, question.limits);
  const verdict = verdictOf(judged, {
    unpredictable: notPredictedOf(rest, posed).length > 0,
    rolls: rollingOf(problem, judged, failures).length > 0,
    nearlyHeld: false,
    solverLoaded: solver !== null,
  });
  const asBuilt = (index: number): number => (index < piece ? index : index + 1);
  const going = judged.stands === false ? failures : [];
  const first = going.map(({ pieces, on, hinge }) => ({
    pieces: pieces.map(asBuilt),
    on: typeof on === 'number' ? asBuilt(on) : on,
    hinge,
  }));
  return success({ verdict, stands: judged.stands, first });
}
