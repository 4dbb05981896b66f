// [F5] [F6] The smallest points that favour a chosen kind. Rows are tried by ones, by twos, and so on; with every set of rows
// that works, all larger sets that hold it are left out, so that further rules differ in their rows.

import { favouringRule } from './checked-rule.ts';
import type { Meter } from './exact/meter.ts';
import { meterOf } from './exact/meter.ts';
import type { Favouring, FavourTask, RuleOrder } from './favour-types.ts';
import type { SmallestRule } from './smallest-rule.ts';
import { smallestRule } from './smallest-rule.ts';
import type { Work } from './types.ts';
import type { WholeFavour } from './whole-task.ts';
import { wholeFavour } from './whole-task.ts';
import { whyNot } from './why-not.ts';

export interface FavourWish {
  readonly order: RuleOrder;
  /** How many different rules are wanted at most, from 1 on. */
  readonly rules: number;
}

/**
 * Points under which the kind earns at least `lead` more than every other, or why there are none. Every rule is worked out
 * anew from the counts before it is told. Throws RangeError for a task that makes no sense (types say what does).
 */
export function favour(task: FavourTask, wish: FavourWish, work: Work): Favouring {
  const whole = wholeFavour(task);
  const meter = meterOf(work);
  const notSettled = (): Favouring => ({ status: 'not-settled', branches: meter.branches() });
  const all = Array.from({ length: whole.rows }, (_, j) => j);
  const any = smallestRule(whole, all, null, meter);
  if (any.status === 'stopped') return notSettled();
  if (any.status === 'none') {
    const why = whyNot(task, meter);
    return why === null ? notSettled() : { status: 'impossible', why, branches: meter.branches() };
  }
  const sets = differentSets(whole, wish, meter);
  if (sets === null) return notSettled();
  const rules = sets.slice(0, wish.rules).map((found) => favouringRule(task, found.rates));
  return { status: 'possible', rules, complete: sets.length <= wish.rules, branches: meter.branches() };
}

type Found = Extract<SmallestRule, { status: 'found' }>;

interface FoundSet extends Found {
  readonly rows: readonly number[];
}

/** One more than wished for, where there is one; null where the work limit was reached. */
function differentSets(task: WholeFavour, { order, rules }: FavourWish, meter: Meter): readonly FoundSet[] | null {
  return order === 'fewest-rows' ? byRows(task, rules + 1, meter) : bySum(task, rules + 1, meter);
}

function byRows(task: WholeFavour, wanted: number, meter: Meter): readonly FoundSet[] | null {
  const found: FoundSet[] = [];
  const needed = neededRows(task, meter);
  for (let size = 1; size <= task.rows && found.length < wanted; size += 1) {
    const ofSize: FoundSet[] = [];
    for (const rows of setsOf(size, task.rows)) {
      if (!needed.every((row) => rows.includes(row)) || found.some((one) => holds(rows, one.rows))) continue;
      const answer = smallestRule(task, rows, null, meter);
      if (answer.status === 'stopped') return null;
      if (answer.status === 'found') ofSize.push({ ...answer, rows });
    }
    found.push(...ofSize.sort((a, b) => Number(a.sum - b.sum)));
  }
  return found.slice(0, wanted);
}

/** Rows without which nothing works, whatever the others give. */
function neededRows(task: WholeFavour, meter: Meter): readonly number[] {
  const all = Array.from({ length: task.rows }, (_, j) => j);
  const without = (row: number): readonly number[] => all.filter((one) => one !== row);
  return all.filter((row) => smallestRule(task, without(row), null, meter).status === 'none');
}

/** Each time the smallest sum among the sets that hold none of those found; of these the one with fewest rows. */
function bySum(task: WholeFavour, wanted: number, meter: Meter): readonly FoundSet[] | null {
  const found: FoundSet[] = [];
  while (found.length < wanted) {
    let best: FoundSet | null = null;
    for (let size = 1; size <= task.rows; size += 1) {
      for (const rows of setsOf(size, task.rows)) {
        if (found.some((one) => holds(rows, one.rows))) continue;
        const answer = smallestRule(task, rows, best?.sum ?? null, meter);
        if (answer.status === 'stopped') return null;
        if (answer.status === 'found') best = { ...answer, rows };
      }
    }
    if (best === null) break;
    found.push(best);
  }
  return found;
}

const holds = (rows: readonly number[], others: readonly number[]): boolean =>
  others.every((row) => rows.includes(row));

/** All sets of so many of the first `count` whole numbers, the ones that stand first first. */
export function setsOf(size: number, count: number): readonly (readonly number[])[] {
  if (size === 0) return [[]];
  return Array.from({ length: count - size + 1 }, (_, first) =>
    setsOf(size - 1, count - first - 1).map((rest) => [first, ...rest.map((one) => one + first + 1)]),
  ).flat();
}
