// The engine's answer to each question. The linear solver is loaded for the first build that asks for one, and kept.

import type { Evaluator, Statics } from '@cairnmark/engine';
import { evaluate, needsSolver, scoreClass, someNeedSolver, stabilityQuestion, USUAL_LIMITS } from '@cairnmark/engine';
import type { LinearSolver, TabsOf, WithoutPiece } from '@cairnmark/geometry';
import { pose, SMALL_BUILD, tiltTowards, withoutPiece } from '@cairnmark/geometry';
import type { StabilityOverlay } from '../scene/overlay-of.ts';
import { overlayOf } from '../scene/overlay-of.ts';
import type { Build, EngineQuestion, Questions, Topic } from './questions.ts';

type Progress = (solved: number, most: number) => void;

/** Where answers come from. `solver` gives the same solver every time; null: it cannot be had now, and the answer says so. */
export interface Tools {
  readonly solver: () => Promise<LinearSolver | null>;
  /** For one scoring; it knows the reports of the scoring before. */
  readonly evaluator: () => Evaluator;
  readonly progress: Progress;
  readonly tabsOf: TabsOf;
}

export async function answerTo(question: EngineQuestion, tools: Tools): Promise<Questions[Topic]['answer']> {
  switch (question.topic) {
    case 'report':
      return askTwice(
        (statics) => evaluate(question.ask.attempt, question.ask, statics),
        (result) => result.ok && needsSolver(result.value),
        tools,
      );
    case 'score': {
      const evaluate = tools.evaluator();
      return askTwice(
        (statics) => scoreClass(question.ask, statics, evaluate),
        (result) => result.ok && someNeedSolver(result.value),
        tools,
      );
    }
    case 'without':
      return withoutEach(question.ask, await staticsFor(question.ask, tools));
    case 'overlay':
      return overlayFor(question.ask, noSolver(tools));
    case 'tilt':
      return tiltOf(question.ask, question.ask.towardsRad, await staticsFor(question.ask, tools));
  }
}

/** Without a solver first; with one where the answer says that it takes one. */
async function askTwice<T>(ask: (statics: Statics) => T, needsOne: (answer: T) => boolean, tools: Tools): Promise<T> {
  const first = ask(noSolver(tools));
  const large = needsOne(first) ? await tools.solver() : null;
  return large === null ? first : ask({ ...noSolver(tools), solver: counting(large, tools.progress) });
}

const noSolver = ({ tabsOf }: Tools): Statics => ({ solver: null, limits: USUAL_LIMITS, tabsOf });

/** Builds too large for the small solver of geometry get the large one. */
async function staticsFor({ attempt }: Build, tools: Tools): Promise<Statics> {
  const large = attempt.layout.pieces.length > SMALL_BUILD ? await tools.solver() : null;
  return { ...noSolver(tools), solver: large === null ? null : counting(large, tools.progress) };
}

/** The same solver, which tells each time it has solved a programme. */
function counting(solver: LinearSolver, progress: Progress): LinearSolver {
  let solved = 0;
  return {
    name: solver.name,
    open: (model) => {
      const session = solver.open(model);
      return {
        close: session.close,
        maximise: (goal, pivotLimit) => {
          solved += 1;
          progress(solved, USUAL_LIMITS.solves);
          return session.maximise(goal, pivotLimit);
        },
      };
    },
  };
}

function withoutEach(build: Build, statics: Statics): readonly (WithoutPiece | null)[] {
  const question = stabilityQuestion(build.attempt, build.challenge, build.group, statics);
  if (question === null) return [];
  return question.pieces.map((_, piece) => {
    const answer = withoutPiece(question, piece);
    return answer.ok ? answer.value : null;
  });
}

function overlayFor({ stability, ...build }: Questions['overlay']['ask'], statics: Statics): StabilityOverlay | null {
  const question = stabilityQuestion(build.attempt, build.challenge, build.group, statics);
  const posed = question === null ? null : pose(question, question.pieces);
  return posed?.ok ? overlayOf(stability, posed.value) : null;
}

function tiltOf(build: Build, towardsRad: number, statics: Statics): Questions['tilt']['answer'] {
  const question = stabilityQuestion(build.attempt, build.challenge, build.group, statics);
  if (question === null) return null;
  const answer = tiltTowards(question, [Math.cos(towardsRad), Math.sin(towardsRad)]);
  return answer.ok ? answer.value : null;
}
