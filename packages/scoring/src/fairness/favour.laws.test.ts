import { describe, expect, it } from 'vitest';
import { comparedFavour } from '../../../../tests/reference/lab/compared-favour.ts';
import { FAVOUR_TASKS, favourTasks } from '../../../../tests/reference/lab/tasks.ts';
import { share } from '../../../../tests/tools/share.ts';

const { seed, count } = FAVOUR_TASKS;

describe('favour a kind', () => {
  it(`[F5] [F6] [F7] is what trying all points says (seed ${seed})`, () => {
    const tasks = favourTasks(seed, count).slice(0, share(count, 150));
    const seen = new Map<string, number>();
    tasks.forEach((task, k) => {
      const { answer, wrong } = comparedFavour(task);
      expect({ k, wrong }).toEqual({ k, wrong: [] });
      seen.set(answer, (seen.get(answer) ?? 0) + 1);
    });
    for (const answer of ['possible', 'zero', 'twin', 'dominated', 'mix', 'lead-out-of-reach']) {
      expect([answer, seen.get(answer) ?? 0]).toEqual([answer, expect.toSatisfy((times: number) => times >= 2)]);
    }
  });
});
