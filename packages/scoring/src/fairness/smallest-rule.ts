// The smallest points that give the lead with some of the rows alone: least sum of the rates; of equal sums, as little as can
// be on the rows that stand last.

import type { Meter } from './exact/meter.ts';
import type { AtLeast, Programme } from './exact/tableau.ts';
import { cheapestWhole } from './exact/whole.ts';
import type { WholeFavour } from './whole-task.ts';

export type SmallestRule =
  | { readonly status: 'found'; readonly rates: readonly bigint[]; readonly sum: bigint }
  | { readonly status: 'none' | 'stopped' };

/** `rows`: positions, in order. `sumBelow`: only smaller sums are looked for; null: any. Rates are of all rows, in steps. */
export function smallestRule(
  task: WholeFavour,
  rows: readonly number[],
  sumBelow: bigint | null,
  meter: Meter,
): SmallestRule {
  const signs = task.negative ? [1n, -1n] : [1n];
  const columns = signs.flatMap((sign) => rows.map((row) => ({ row, sign })));
  const weights = weightsOf(rows.length, task.most);
  const cost = columns.map((_, j) => weights.one + (weights.last[j % rows.length] ?? 0n));
  const programme: Programme = {
    cost,
    rows: [
      ...task.more.map((more) => ({
        of: columns.map(({ row, sign }) => sign * (more[row] ?? 0n)),
        limit: task.lead,
      })),
      ...mostRows(columns.length, task.most),
    ],
  };
  const below = sumBelow === null ? null : sumBelow * weights.one;
  const answer = cheapestWhole({ programme, whole: columns.length, below, meter });
  if (answer.status !== 'found') return answer;
  const rates = Array.from({ length: task.rows }, () => 0n);
  columns.forEach(({ row, sign }, j) => {
    rates[row] = (rates[row] ?? 0n) + sign * (answer.values[j] ?? 0n);
  });
  return { status: 'found', rates, sum: answer.cost / weights.one };
}

/** No variable above the limit. */
export const mostRows = (variables: number, most: bigint): readonly AtLeast[] =>
  Array.from({ length: variables }, (_, j) => ({
    of: Array.from({ length: variables }, (__, k) => (k === j ? -1n : 0n)),
    limit: -most,
  }));

/**
 * What a step costs: so much that no difference on the rows outweighs a smaller sum, and beyond it more on each later row
 * than all that the rows before it can cost.
 */
export function weightsOf(rows: number, most: bigint): { readonly one: bigint; readonly last: readonly bigint[] } {
  const base = 2n * most + 1n;
  const last = Array.from({ length: rows }, (_, k) => base ** BigInt(k));
  return { one: base ** BigInt(rows), last };
}
