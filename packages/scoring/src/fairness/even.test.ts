import { describe, expect, it } from 'vitest';
import { EXAMPLES, exampleData } from '../../../../tests/reference/lab/examples.ts';
import { mostEven } from './even.ts';
import type { EvenTask } from './even-types.ts';

const WORK = { branchesMost: 20_000 };

describe('as even as can be', () => {
  it.each(EXAMPLES.fairness)('[F9] [F10] $name', ({ kit, rows, max, negative, smallestGap, greatestShare }) => {
    const task: EvenTask = { data: exampleData(kit, rows), goal: 'share', per: 'piece', most: max, negative, step: 1 };
    const fair = mostEven(task, WORK);
    if (fair.status !== 'found') throw new Error(fair.status);
    expect([fair.rule.share, fair.rule.sum, fair.rule.rates]).toEqual([
      greatestShare.share,
      greatestShare.sum,
      greatestShare.w,
    ]);
    const near = mostEven({ ...task, goal: 'gap' }, WORK);
    if (near.status !== 'found') throw new Error(near.status);
    expect([near.rule.gap, near.rule.sum]).toEqual([smallestGap.gap, smallestGap.sum]);
    expect(fair.exactly.possible).toBe(greatestShare.share === 1);
  });
});
