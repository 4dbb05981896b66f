// The smallest points that give the lead with some of the rows alone: the least sum of the rates; of equal sums the one that
// takes least by the rows that stand last, then gives least by them.

import { ceiling, divisor } from './exact/fraction.ts';
import type { Meter } from './exact/meter.ts';
import type { AtLeast, Programme } from './exact/tableau.ts';
import { mended, tableauOf } from './exact/tableau.ts';
import { cheapestWhole } from './exact/whole.ts';
import { areFew, tried } from './few-rows.ts';
import type { WholeFavour } from './whole-task.ts';

export type SmallestRule = FoundRule | { readonly status: 'none' | 'stopped' };

export interface FoundRule {
  readonly status: 'found';
  /** Of all rows, in steps. */
  readonly rates: readonly bigint[];
  readonly sum: bigint;
}

/** `rows`: positions, in order. `sumBelow`: only smaller sums are looked for; null: any. */
export function smallestRule(
  task: WholeFavour,
  rows: readonly number[],
  sumBelow: bigint | null,
  meter: Meter,
): SmallestRule {
  if (!areFew(rows, task)) return branchedRule(task, rows, sumBelow, meter);
  if (!meter.open()) return { status: 'stopped' };
  const rates = tried(task, rows, sumBelow === null ? Number.POSITIVE_INFINITY : Number(sumBelow));
  if (rates === null) return { status: 'none' };
  const sum = rates.reduce((all, rate) => all + Math.abs(rate), 0);
  const of = (row: number): bigint => BigInt(rates[rows.indexOf(row)] ?? 0);
  return { status: 'found', rates: Array.from({ length: task.rows }, (_, row) => of(row)), sum: BigInt(sum) };
}

/** The same by branch and bound, whatever the sizes. */
export function branchedRule(
  task: WholeFavour,
  rows: readonly number[],
  sumBelow: bigint | null,
  meter: Meter,
): SmallestRule {
  const columns = signedColumns(rows, task.negative);
  const weights = weightsOf(columns.length, task.most);
  const below = sumBelow === null ? null : sumBelow * weights.one;
  const programme = favourProgramme(task, columns, weights.columns);
  const answer = cheapestWhole({ programme, whole: columns.length, below, first: false, meter });
  if (answer.status !== 'found') return answer;
  return { status: 'found', rates: ratesOf(columns, answer.values, task.rows), sum: answer.cost / weights.one };
}

/** The smallest sum with all rows, if it is below; or with `first` the sum of some rates that give the lead: whether there are any. */
export function someSum(
  task: WholeFavour,
  below: bigint | null,
  first: boolean,
  meter: Meter,
): { readonly status: 'found'; readonly sum: bigint } | { readonly status: 'none' | 'stopped' } {
  const columns = signedColumns(everyRow(task), task.negative);
  const programme = favourProgramme(
    task,
    columns,
    columns.map(() => 1n),
  );
  const answer = cheapestWhole({ programme, whole: columns.length, below, first, meter });
  return answer.status === 'found' ? { status: 'found', sum: answer.cost } : answer;
}

/** Whether fractions of points of these rows give the lead: if not, whole ones do not either. */
export function mayDo(task: WholeFavour, rows: readonly number[]): boolean {
  const columns = signedColumns(rows, task.negative);
  return (
    mended(
      tableauOf(
        favourProgramme(
          task,
          columns,
          columns.map(() => 0n),
        ),
      ),
    ).broken === null
  );
}

export const everyRow = ({ rows }: WholeFavour): readonly number[] => Array.from({ length: rows }, (_, j) => j);

function favourProgramme(task: WholeFavour, columns: readonly SignedColumn[], cost: readonly bigint[]): Programme {
  const leads = task.more.map((more) =>
    tightened({ of: columns.map(({ row, sign }) => sign * (more[row] ?? 0n)), limit: task.lead }),
  );
  return { cost, rows: [...leads, ...mostRows(columns.length, task.most)] };
}

export interface SignedColumn {
  readonly row: number;
  readonly sign: bigint;
}

/** What rows give, and beside it what they take, where they may. */
export const signedColumns = (rows: readonly number[], negative: boolean): readonly SignedColumn[] =>
  rows.flatMap((row) => (negative ? [1n, -1n] : [1n]).map((sign) => ({ row, sign })));

/** The rates of all rows. */
export function ratesOf(columns: readonly SignedColumn[], values: readonly bigint[], rows: number): readonly bigint[] {
  const rates = Array.from({ length: rows }, () => 0n);
  columns.forEach(({ row, sign }, j) => {
    rates[row] = (rates[row] ?? 0n) + sign * (values[j] ?? 0n);
  });
  return rates;
}

/** Of whole numbers: 4 a + 6 b of at least 3 is 2 a + 3 b of at least 2, which leaves less in between. */
function tightened({ of, limit }: AtLeast): AtLeast {
  const common = of.reduce((all, one) => divisor(all, one < 0n ? -one : one), 0n);
  if (common <= 1n) return { of, limit };
  return { of: of.map((one) => one / common), limit: ceiling({ over: limit, under: common }) };
}

/** No variable above the limit. */
export const mostRows = (variables: number, most: bigint): readonly AtLeast[] =>
  Array.from({ length: variables }, (_, j) => ({
    of: Array.from({ length: variables }, (__, k) => (k === j ? -1n : 0n)),
    limit: -most,
  }));

/**
 * What a step of each column costs: so much that nothing outweighs a smaller sum, and beyond it more in each later column
 * than all that those before it can cost. `one`: what a step of the sum costs.
 */
export function weightsOf(
  columns: number,
  most: bigint,
): { readonly one: bigint; readonly columns: readonly bigint[] } {
  const base = most + 1n;
  const one = base ** BigInt(columns);
  return { one, columns: Array.from({ length: columns }, (_, k) => one + base ** BigInt(k)) };
}
