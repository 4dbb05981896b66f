import { expect, it } from 'vitest';
import { comparedEven } from '../../../../tests/reference/lab/compared-even.ts';
import { EVEN_TASKS, evenTasks } from '../../../../tests/reference/lab/tasks.ts';
import { share } from '../../../../tests/tools/share.ts';

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
