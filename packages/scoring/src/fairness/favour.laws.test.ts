import { describe, expect, it } from 'vitest';
import { comparedFavour } from '../../../../tests/reference/lab/compared-favour.ts';
import { exampleData } from '../../../../tests/reference/lab/examples.ts';
import { drawn, FAVOUR_TASKS, favourTasks, largeTasks } from '../../../../tests/reference/lab/tasks.ts';
import { seeded } from '../../../../tests/reference/seeded.ts';
import { freshSeed, share } from '../../../../tests/tools/share.ts';
import { meterOf } from './exact/meter.ts';
import { favour } from './favour.ts';
import type { FavourTask } from './favour-types.ts';
import { areFew } from './few-rows.ts';
import { branchedRule, smallestRule } from './smallest-rule.ts';
import { wholeFavour } from './whole-task.ts';

const { seed, count } = FAVOUR_TASKS;
const WORK = { branchesMost: 100_000 };
const FEW = { order: 'fewest-rows', rules: 1 } as const;

/** What does not hang on the order of anything: found or not and why, rows, sum. */
function told(task: FavourTask, order: 'fewest-rows' | 'smallest-sum' = 'fewest-rows'): readonly unknown[] {
  const answer = favour(task, { order, rules: 1 }, WORK);
  if (answer.status === 'possible') return ['possible', answer.rules[0]?.rows.length, answer.rules[0]?.sum];
  if (answer.status === 'not-settled') throw new Error('not settled');
  const { why } = answer;
  return why.code === 'lead-out-of-reach' ? [why.code, why.greatestLead, why.maxNeeded] : [why.code];
}

const reordered = (task: FavourTask, kinds: readonly number[], rows: readonly number[]): FavourTask => ({
  ...task,
  data: {
    rows: rows.map((j) => task.data.rows[j]!),
    kinds: kinds.map((k) => {
      const kind = task.data.kinds[k]!;
      return { ...kind, measures: rows.map((j) => kind.measures[j]!) };
    }),
  },
});

const upTo = (length: number): readonly number[] => Array.from({ length }, (_, k) => k);

describe('favour a kind', () => {
  it(`[F5] [F6] [F7] is what trying all points says (seed ${seed})`, () => {
    const seen = new Map<string, number>();
    favourTasks(seed, share(count, 110)).forEach((task, k) => {
      const { answer, wrong } = comparedFavour(task);
      expect({ k, wrong }).toEqual({ k, wrong: [] });
      seen.set(answer, (seen.get(answer) ?? 0) + 1);
    });
    for (const answer of ['possible', 'zero', 'twin', 'dominated', 'mix', 'lead-out-of-reach']) {
      expect([answer, (seen.get(answer) ?? 0) >= 2]).toEqual([answer, true]);
    }
  });

  const tasks = [...favourTasks(4243, share(300, 40)), ...largeTasks(4244, share(100, 12))];

  it('[F6] another order of kinds or rows changes nothing (seeds 4243, 4244)', () => {
    const random = seeded(4245);
    for (const task of tasks) {
      const other = reordered(
        task,
        drawn(random, upTo(task.data.kinds.length), task.data.kinds.length),
        drawn(random, upTo(task.data.rows.length), task.data.rows.length),
      );
      expect(told(other)).toEqual(told(task));
      const kinds = reordered(
        task,
        drawn(random, upTo(task.data.kinds.length), task.data.kinds.length),
        upTo(task.data.rows.length),
      );
      const [one, two] = [favour(task, FEW, WORK), favour(kinds, FEW, WORK)];
      if (one.status !== 'possible' || two.status !== 'possible') continue;
      expect(two.rules[0]?.rates).toEqual(one.rules[0]?.rates);
    }
  });

  it('[F5] a further row never makes the possible impossible, nor the sum larger (seeds 4243, 4244)', () => {
    const random = seeded(4246);
    for (const task of tasks) {
      const before = told(task, 'smallest-sum');
      if (before[0] !== 'possible') continue;
      const [row = ''] = drawn(random, ['F', 'Cs', 'hcm', 'pap10', 'vol10'], 1);
      const { kinds } = exampleData(
        task.data.kinds.map(({ id }) => id),
        [row],
      );
      const data = {
        rows: [...task.data.rows, `${row} again`],
        kinds: task.data.kinds.map((kind, k) => ({ ...kind, measures: [...kind.measures, ...kinds[k]!.measures] })),
      };
      const after = told({ ...task, data }, 'smallest-sum');
      expect(after[0]).toBe('possible');
      expect(after[2]).toBeLessThanOrEqual(before[2] as number);
    }
  });

  it('[F5] twice the limit never raises the smallest sum (seeds 4243, 4244)', () => {
    for (const task of tasks) {
      const before = told(task, 'smallest-sum');
      if (before[0] !== 'possible') continue;
      const after = told({ ...task, most: 2 * task.most }, 'smallest-sum');
      expect(after[0]).toBe('possible');
      expect(after[2]).toBeLessThanOrEqual(before[2] as number);
    }
  });

  it('[F5] a rule that is told favours the kind by the lead, added up from the counts (seeds 4243, 4244)', () => {
    for (const task of tasks) {
      const answer = favour(task, { order: 'fewest-rows', rules: 3 }, WORK);
      if (answer.status !== 'possible') continue;
      for (const { rates } of answer.rules) {
        const earned = new Map(
          task.data.kinds.map(({ id, measures }) => [id, measures.reduce((sum, n, j) => sum + n * rates[j]!, 0)]),
        );
        const own = earned.get(task.favourite)!;
        for (const [id, points] of earned)
          if (id !== task.favourite) expect(own - points).toBeGreaterThanOrEqual(task.lead);
        for (const rate of rates) expect(Math.abs(rate)).toBeLessThanOrEqual(task.most);
        if (!task.negative) expect(Math.min(...rates)).toBeGreaterThanOrEqual(0);
      }
    }
  });

  const fresh = freshSeed('few rows');
  it(`[F6] trying few rows and parting the limits say the same, to the rate (fresh seed ${fresh})`, () => {
    const meter = meterOf({ branchesMost: 1_000_000 });
    for (const task of favourTasks(fresh, share(400, 30))) {
      const whole = wholeFavour({ ...task, most: Math.min(task.most, 12) });
      for (const rows of [[0], [1], [0, 1], [1, 2].filter((row) => row < whole.rows)]) {
        expect(areFew(rows, whole)).toBe(true);
        expect(branchedRule(whole, rows, null, meter)).toEqual(smallestRule(whole, rows, null, meter));
      }
    }
  });
});
