import { expect, it } from 'vitest';
import { proves } from '../../../../tests/reference/lab/certificates.ts';
import { ruleByHighs } from '../../../../tests/reference/lab/second-opinion.ts';
import { HIGHS_TASKS, largeTasks } from '../../../../tests/reference/lab/tasks.ts';
import { share } from '../../../../tests/tools/share.ts';
import { favour } from './favour.ts';

const { seed, count } = HIGHS_TASKS;

it(`[F5] [F6] HiGHS finds as few rows and as small a sum, and nothing where we prove that there is nothing (seed ${seed})`, () => {
  const work = { branchesMost: 100_000 };
  largeTasks(seed, share(count, 12)).forEach((task, k) => {
    const few = favour(task, { order: 'fewest-rows', rules: 1 }, work);
    const small = favour(task, { order: 'smallest-sum', rules: 1 }, work);
    const [fewest, smallest] = [ruleByHighs(task, 'fewest-rows'), ruleByHighs(task, 'smallest-sum')];
    const first = few.status === 'possible' ? few.rules[0] : undefined;
    expect({ k, rows: first?.rows.length, sum: first?.sum }).toEqual({ k, rows: fewest?.rows, sum: fewest?.sum });
    expect({ k, sum: small.status === 'possible' ? small.rules[0]?.sum : undefined }).toEqual({
      k,
      sum: smallest?.sum,
    });
    expect([k, few.status === 'possible' || (few.status === 'impossible' && proves(few.why, task))]).toEqual([k, true]);
  });
});
