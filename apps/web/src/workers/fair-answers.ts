// The points lab's answer to each question of Fair points.

import type { LabData, RuleFamily, Work } from '@cairnmark/scoring';
import { familyOnKit, favour, mostEven, offers, riddle, rulesOf } from '@cairnmark/scoring';
import type { FairQuestion, FairQuestions } from './fair-questions.ts';
import type { Progress } from './worker-client.ts';

export function fairAnswerTo(question: FairQuestion, progress: Progress): FairQuestions[keyof FairQuestions]['answer'] {
  const work: Work = {
    branchesMost: BRANCHES_MOST,
    stop: (branches) => {
      progress(branches, BRANCHES_MOST);
      return false;
    },
  };
  switch (question.topic) {
    case 'favour': {
      const { task, further, rules } = question.ask;
      const favouring = favour(task, { order: 'fewest-rows', rules }, work);
      return { favouring, offers: favouring.status === 'impossible' ? offers(task, further, work) : null };
    }
    case 'even':
      return mostEven(question.ask, work);
    case 'riddle':
      return riddleOf(question.ask);
  }
}

/** Thousands of times what any kit of a school took; a search that goes on so long is better stopped. */
const BRANCHES_MOST = 100_000;

/** Of the rules that can be told apart one is the secret; where all look like another, of all. */
function riddleOf({
  data,
  family,
  pick,
}: {
  readonly data: LabData;
  readonly family: RuleFamily;
  readonly pick: number;
}): FairQuestions['riddle']['answer'] {
  const onKit = familyOnKit(data, family);
  const all = rulesOf(family, data.rows.length);
  const alike = new Set(onKit.alike.flat().map((rule) => JSON.stringify(rule)));
  const alone = all.filter((rule) => !alike.has(JSON.stringify(rule)));
  const choice = alone.length > 0 ? alone : all;
  const rule = choice[Math.min(choice.length - 1, Math.floor(pick * choice.length))];
  if (rule === undefined) throw new RangeError(`no rule of the family ${family}`);
  return { riddle: riddle(data, family, rule), onKit };
}
