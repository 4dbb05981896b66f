// The search for even points held against trying all of them.

import type { EvenTask } from '@cairnmark/scoring';
import { mostEven } from '@cairnmark/scoring';
import { triedEven } from './brute-force.ts';
import { provesNeverEven } from './certificates.ts';

const WORK = { branchesMost: 50_000 };

export interface ComparedEven {
  readonly answer: 'even' | 'never even' | 'no rows' | 'not-settled';
  /** What differs from trying all; []: nothing does. */
  readonly wrong: readonly string[];
  readonly branches: number;
}

export function comparedEven(task: EvenTask): ComparedEven {
  const answer = mostEven(task, WORK);
  if (answer.status === 'not-settled')
    return { answer: 'not-settled', wrong: ['work limit'], branches: answer.branches };
  if (answer.status === 'no-rows') {
    const nobody = task.data.kinds.every(({ measures }) => measures.every((one) => one === 0));
    return { answer: 'no rows', wrong: nobody ? [] : ['somebody has some'], branches: 0 };
  }
  const { rule, exactly, branches } = answer;
  const { share, gap } = triedEven(task);
  const same =
    task.goal === 'share'
      ? rule.lowest * share.highest === rule.highest * share.lowest && rule.sum === share.sum
      : rule.gap === gap.gap && rule.sum === gap.sum;
  const isEven = share.lowest === share.highest;
  const wrong = [
    ...(same ? [] : [task.goal]),
    // What is even within the box is even; what is even beyond it was not tried.
    ...(isEven && !exactly.possible ? ['called never even'] : []),
    ...(exactly.possible && (exactly.rule.gap !== 0 || exactly.rule.highest < 1) ? ['called even'] : []),
    ...(exactly.possible || provesNeverEven(exactly, task) ? [] : ['pieces prove nothing']),
  ];
  return { answer: exactly.possible ? 'even' : 'never even', wrong, branches };
}
