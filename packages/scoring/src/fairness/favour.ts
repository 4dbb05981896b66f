// [F5] [F6] The smallest points that favour a chosen kind. Rows are tried by ones, by twos, and so on; with every set of rows
// that works, all larger sets that hold it are left out, so that further rules differ in their rows.

import { favouringRule } from './checked-rule.ts';
import { meterOf } from './exact/meter.ts';
import type { Favouring, FavourTask, RuleOrder } from './favour-types.ts';
import { byRows, bySum, NONE } from './row-sets.ts';
import { everyRow, mayDo } from './smallest-rule.ts';
import type { Work } from './types.ts';
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
  const wanted = Math.max(1, wish.rules);
  const sets = !mayDo(whole, everyRow(whole))
    ? NONE
    : wish.order === 'fewest-rows'
      ? byRows(whole, wanted, meter)
      : bySum(whole, wanted, meter);
  if (sets === null) return notSettled();
  if (sets.found.length === 0) {
    const why = whyNot(task, meter);
    return why === null ? notSettled() : { status: 'impossible', why, branches: meter.branches() };
  }
  const rules = sets.found.slice(0, wish.rules).map((found) => favouringRule(task, found.rates));
  const complete = sets.all && sets.found.length <= wish.rules;
  return { status: 'possible', rules, complete, branches: meter.branches() };
}
