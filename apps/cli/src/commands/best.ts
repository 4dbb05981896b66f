// best: the best build that the pieces of each challenge allow, with whose it is the best, or why there is none.

import type { BestPlan, Challenge, ClassRecord } from '@cairnmark/engine';
import { bestPlan, challengeIssues, USUAL_BEST_LIMIT } from '@cairnmark/engine';
import { rememberedTabPaper } from '@cairnmark/nets';
import type { BestAnswer, FrontAnswer } from '@cairnmark/scoring';
import { bestBuild, heightBaseFront } from '@cairnmark/scoring';
import type { TerminalWords } from '@cairnmark/words';
import { bestJson, bestText } from '../best-text.ts';
import type { Call } from '../call.ts';
import type { ExitCode } from '../exit.ts';
import { WELL } from '../exit.ts';
import { givenClass } from '../given-class.ts';
import type { Io } from '../io.ts';
import { knownNames, namedAs } from '../named.ts';
import { refuse, tell } from '../speak.ts';

/** What was worked out for one challenge. `plan` null: its places go by something else. */
export interface WorkedOut {
  readonly challenge: Challenge;
  readonly plan: BestPlan | null;
  readonly answer: BestAnswer | null;
  readonly front: FrontAnswer | null;
}

export function best({ rest, challenge: asked, form, language }: Call, words: TerminalWords, io: Io): ExitCode {
  const given = givenClass(rest, words, io);
  if (!given.ok) return refuse(io, given.faults);
  const { record, faultLine } = given.value;
  const { challenges } = record;
  const wanted = asked === null ? null : namedAs(challenges, asked);
  if (wanted === undefined) {
    return refuse(io, [words.say('usage.challenge-unknown', { name: asked ?? '', known: knownNames(challenges) })]);
  }
  const chosen = wanted === null ? challenges : [wanted];
  const issues = chosen.flatMap((one) => challengeIssues(one, ['challenges', challenges.indexOf(one)]));
  if (issues.length > 0) return refuse(io, issues.map(faultLine));
  const all = chosen.map(workedOut);
  tell(io, form === 'json' ? bestJson(record, all) : textOf(record, all, language, words));
  return WELL;
}

function workedOut(challenge: Challenge): WorkedOut {
  const plan = bestPlan(challenge, { group: null, earned: null }, rememberedTabPaper());
  if (plan === null) return { challenge, plan, answer: null, front: null };
  const { task } = plan;
  const isHigh = task.goal.kind === 'tallest' || task.goal.kind === 'tallest-on-smallest-base';
  return {
    challenge,
    plan,
    answer: bestBuild(task, USUAL_BEST_LIMIT),
    front: isHigh ? heightBaseFront(task, USUAL_BEST_LIMIT) : null,
  };
}

function textOf(
  record: ClassRecord,
  all: readonly WorkedOut[],
  language: Call['language'],
  words: TerminalWords,
): string {
  const head = record.invented ? [words.say('score.invented')] : [];
  return [...head, ...all.map((one) => bestText(one, record, language, words))].join('\n\n');
}
