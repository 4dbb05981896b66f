// A rule as it is told: what it makes of the kit is worked out anew from the counts, in whole steps, apart from the search.

import type { FavouringRule, FavourTask } from './favour-types.ts';
import type { LabData, LabRule, PointStep } from './types.ts';

/** `steps`: the rates in steps of the points, in the order of the rows. */
export function labRule({ rows, kinds }: LabData, steps: readonly number[], step: PointStep): LabRule {
  const scores = kinds.map(({ measures }) => measures.reduce((sum, count, j) => sum + count * (steps[j] ?? 0), 0));
  if (![...steps, ...scores].every(Number.isSafeInteger))
    throw new RangeError('points beyond what can be told exactly');
  return {
    rates: steps.map((one) => one * step),
    rows: rows.filter((_, j) => (steps[j] ?? 0) !== 0),
    sum: steps.reduce((sum, one) => sum + Math.abs(one), 0) * step,
    scores: scores.map((score) => score * step),
  };
}

/** Throws RangeError where the kind leads by less than the task says: a fault of the search. */
export function favouringRule(
  { data, favourite, lead, step }: Pick<FavourTask, 'data' | 'favourite' | 'lead' | 'step'>,
  steps: readonly bigint[],
): FavouringRule {
  const rule = labRule(data, steps.map(Number), step);
  const at = data.kinds.findIndex(({ id }) => id === favourite);
  const others = rule.scores.filter((_, k) => k !== at);
  const leads = (rule.scores[at] ?? 0) - Math.max(...others);
  if (leads < lead) throw new RangeError(`${favourite} leads by ${leads}, not by ${lead}`);
  return { ...rule, lead: leads };
}
