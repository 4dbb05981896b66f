import { expect, it } from 'vitest';
import { provesNeverEven } from '../../../../tests/reference/lab/certificates.ts';
import { comparedEven } from '../../../../tests/reference/lab/compared-even.ts';
import { EVEN_TASKS, evenTasks, kitOf } from '../../../../tests/reference/lab/tasks.ts';
import { seeded } from '../../../../tests/reference/seeded.ts';
import { share } from '../../../../tests/tools/share.ts';
import { mostEven } from './even.ts';
import type { EvenTask } from './even-types.ts';

const { seed, count } = EVEN_TASKS;

it(`[F9] [F10] [F11] is what trying all points says (seed ${seed})`, () => {
  const seen = new Map<string, number>();
  evenTasks(seed, share(count, 20)).forEach((task, k) => {
    const { answer, wrong } = comparedEven(task);
    expect({ k, wrong }).toEqual({ k, wrong: [] });
    seen.set(answer, (seen.get(answer) ?? 0) + 1);
  });

  expect(seen.get('even')).toBeGreaterThanOrEqual(2);
  expect(seen.get('never even')).toBeGreaterThanOrEqual(5);
});

it(`[F11] of every kit just one holds: points that are exactly even, or pieces that show that there are none (seed ${seed})`, () => {
  const random = seeded(seed);
  const seen = { even: 0, never: 0 };
  for (let k = 0; k < share(1500, 120); k += 1) {
    const data = kitOf(random, 2 + (k % 8), 2 + (k % 5));
    // The smallest limit: what is exactly even is looked for beyond it.
    const task: EvenTask = { data, goal: 'share', per: 'piece', most: 1, negative: k % 3 === 0, step: 1 };
    const answer = mostEven(task, { branchesMost: 20_000 });
    if (answer.status === 'no-rows') continue;
    if (answer.status !== 'found') throw new Error(`${k}: ${answer.status}`);
    const { exactly } = answer;
    seen[exactly.possible ? 'even' : 'never'] += 1;
    if (!exactly.possible) expect([k, provesNeverEven(exactly, task)]).toEqual([k, true]);
    else expect([k, new Set(exactly.rule.scores).size, exactly.rule.lowest > 0]).toEqual([k, 1, true]);
  }
  expect(Math.min(seen.even, seen.never)).toBeGreaterThanOrEqual(10);
});
