import { describe, expect, it } from 'vitest';
import { proves } from '../../../../tests/reference/lab/certificates.ts';
import { EXAMPLES, exampleData } from '../../../../tests/reference/lab/examples.ts';
import { favour } from './favour.ts';
import type { FavourTask } from './favour-types.ts';

const WORK = { branchesMost: 20_000 };
const ALL = { order: 'fewest-rows', rules: 20 } as const;

const taskOf = (one: (typeof EXAMPLES.favour)[number]): FavourTask => ({
  data: exampleData(one.kit, one.rows),
  favourite: one.favourite,
  lead: one.lead,
  most: one.max,
  negative: one.negative,
  step: 1,
});

describe('favour a kind', () => {
  it.each(EXAMPLES.favour.filter(({ possible }) => possible))('[F5] [F6] $name', (one) => {
    const task = taskOf(one);
    const answer = favour(task, ALL, WORK);
    if (answer.status !== 'possible') throw new Error(answer.status);
    const [first] = answer.rules;
    expect(first?.rows.length).toBe(one.fewestRows);
    expect(first?.sum).toBe(one.sumAtFewestRows);
    expect(answer.complete).toBe(true);
    const told = (
      rules: readonly { rates: readonly number[]; sum: number; lead: number; scores: readonly number[] }[],
    ) => rules.map(({ rates, sum, scores, lead }) => ({ rows: rates.map((rate) => rate !== 0), sum, lead, scores }));
    expect(answer.rules.map(({ sum }) => sum).sort()).toEqual(one.minimalRowSets?.map(({ sum }) => sum).sort());
    expect(told(answer.rules)).toHaveLength(one.minimalRowSets?.length ?? 0);
    const smallest = favour(task, { order: 'smallest-sum', rules: 1 }, WORK);
    expect(smallest.status === 'possible' && smallest.rules[0]?.sum).toBe(one.smallestSum);
  });

  it.each(EXAMPLES.favour.filter(({ possible }) => !possible))('[F7] $name', (one) => {
    const task = taskOf(one);
    const answer = favour(task, ALL, WORK);
    if (answer.status !== 'impossible') throw new Error(answer.status);
    expect(answer.why.code).toBe(one.reason?.code);
    expect(proves(answer.why, task)).toBe(true);
    if (answer.why.code !== 'lead-out-of-reach') return;
    expect(answer.why).toMatchObject({ greatestLead: one.greatestLead, maxNeeded: one.reason?.maxNeeded });
    expect(answer.why.atGreatest?.lead).toBe(one.greatestLead);
    expect(Math.max(...(answer.why.atNeeded?.rates ?? []))).toBe(one.reason?.maxNeeded);
  });
});
