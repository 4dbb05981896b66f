// The points lab on drawn kits of 6 to 15 kinds and 3 to 8 rows: times as a distribution, ours beside HiGHS in the same run.

import type { EvenTask, FavourTask } from '@cairnmark/scoring';
import { favour, mostEven } from '@cairnmark/scoring';
import { evenByHighs, ruleByHighs } from '../reference/lab/second-opinion.ts';
import { kitOf } from '../reference/lab/tasks.ts';
import { seeded } from '../reference/seeded.ts';
import type { Report } from './measure.ts';

export const name = 'The points lab: points that favour a kind, and even points; exact, beside HiGHS in doubles';

const SEED = 90173;
const KITS_A_SIZE = 30;
const WORK = { branchesMost: 200_000 };

export function run(report: Report): void {
  const random = seeded(SEED);
  for (const kinds of [6, 9, 12, 15]) {
    const tasks = Array.from({ length: KITS_A_SIZE }, (_, k) => taskOf(random, kinds, 3 + (k % 6), k % 3 === 0));
    const few = timed(tasks, {
      ours: (task) => favour(task, { order: 'fewest-rows', rules: 1 }, WORK).status,
      highs: (task) => ruleByHighs(task, 'fewest-rows') ?? 'none',
    });
    tell(`${kinds} kinds, favour`, few, report);
    const even = timed(tasks.map(evenOf), { ours: (task) => mostEven(task, WORK).status, highs: evenByHighs });
    tell(`${kinds} kinds, even`, even, report);
  }
}

function taskOf(random: () => number, kinds: number, rows: number, negative: boolean): FavourTask {
  const data = kitOf(random, kinds, rows);
  const favourite = data.kinds[Math.floor(random() * kinds)]?.id ?? '';
  return { data, favourite, lead: 1 + Math.floor(3 * random()), most: 10, negative, step: 1 };
}

const evenOf = ({ data, most, step }: FavourTask): EvenTask => ({
  data,
  goal: 'share',
  per: 'piece',
  most,
  negative: false,
  step,
});

interface Times {
  readonly ours: readonly number[];
  readonly highs: readonly number[];
}

/** ms of each task, in turns; the first task once more before, to warm both up. */
function timed<T>(tasks: readonly T[], ways: Record<keyof Times, (task: T) => unknown>): Times {
  const took = (way: (task: T) => unknown, task: T): number => {
    const start = performance.now();
    way(task);
    return performance.now() - start;
  };
  for (const task of tasks.slice(0, 5)) for (const way of [ways.ours, ways.highs]) took(way, task);
  const pairs = tasks.map((task) => [took(ways.ours, task), took(ways.highs, task)] as const);
  return { ours: pairs.map(([ours]) => ours), highs: pairs.map(([, highs]) => highs) };
}

function tell(label: string, { ours, highs }: Times, report: Report): void {
  for (const [which, share] of [
    ['median', 0.5],
    ['95 %', 0.95],
    ['longest', 1],
  ] as const) {
    report({ label: `${label}: ${which}`, value: quantile(ours, share), unit: 'ms' });
  }
  const sum = (values: readonly number[]): number => values.reduce((all, one) => all + one, 0);
  report({ label: `${label}: HiGHS / ours, all together`, value: sum(highs) / sum(ours), unit: 'x' });
}

function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
}
