// The search for points held against trying all of them.

import type { FavourTask } from '@cairnmark/scoring';
import { favour } from '@cairnmark/scoring';
import { triedFavour } from './brute-force.ts';
import { proves } from './certificates.ts';

const WORK = { branchesMost: 50_000 };

export interface ComparedFavour {
  readonly answer: 'possible' | 'not-settled' | 'zero' | 'twin' | 'dominated' | 'mix' | 'lead-out-of-reach';
  /** What differs from trying all; []: nothing does. */
  readonly wrong: readonly string[];
  readonly branches: number;
}

export function comparedFavour(task: FavourTask): ComparedFavour {
  const tried = triedFavour(task);
  const answer = favour(task, { order: 'fewest-rows', rules: 40 }, WORK);
  if (answer.status === 'not-settled')
    return { answer: 'not-settled', wrong: ['work limit'], branches: answer.branches };
  if (answer.status === 'impossible') {
    const { why } = answer;
    const wrong = [
      ...(tried.possible ? ['called impossible'] : []),
      ...(proves(why, task) ? [] : [`${why.code} proves nothing`]),
      ...((why.code === 'lead-out-of-reach' ? why.greatestLead : 0) === tried.greatestLead ? [] : ['greatest lead']),
    ];
    return { answer: why.code, wrong, branches: answer.branches };
  }
  const small = favour(task, { order: 'smallest-sum', rules: 1 }, WORK);
  const sets = new Map(
    answer.rules.map(({ rates, sum }) => [rates.reduce((bits, rate, j) => bits + (rate === 0 ? 0 : 2 ** j), 0), sum]),
  );
  const wrong = [
    ...(tried.possible ? [] : ['called possible']),
    ...(answer.rules[0]?.rows.length === tried.fewestRows ? [] : ['fewest rows']),
    ...(answer.rules[0]?.sum === tried.sumAtFewestRows ? [] : ['sum at fewest rows']),
    ...(small.status === 'possible' && small.rules[0]?.sum === tried.smallestSum ? [] : ['smallest sum']),
    ...(answer.complete && sets.size === tried.leastSets.size ? [] : ['sets of rows']),
    ...[...tried.leastSets].flatMap(([rows, sum]) => (sets.get(rows) === sum ? [] : [`sum on rows ${rows}`])),
  ];
  return { answer: 'possible', wrong, branches: answer.branches };
}
