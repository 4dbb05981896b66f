// What the programmes about even points share: a column for each rate that may be given, and what it gives each kind.

import type { EvenCosts } from './even-spread.ts';
import { divisor } from './exact/fraction.ts';
import type { AtLeast } from './exact/tableau.ts';
import { mostRows, ratesOf, signedColumns, weightsOf } from './smallest-rule.ts';

export interface EvenColumns {
  /** By kind: what a step of each column gives it. */
  readonly gives: readonly (readonly bigint[])[];
  /** What all kinds together earn by a step of each column. */
  readonly together: readonly bigint[];
  readonly count: number;
  readonly most: bigint;
  /** No column above the limit. */
  readonly limits: readonly AtLeast[];
  /** Costs that put the smallest sum first, then the rows that stand first; and what a step of the sum costs. */
  readonly cost: readonly bigint[];
  /** The rates of all rows that the columns stand for. */
  readonly ratesOf: (columns: readonly bigint[]) => readonly bigint[];
}

export interface EvenRows {
  readonly measures: readonly (readonly bigint[])[];
  /** Positions of the rows that points are looked for. */
  readonly used: readonly number[];
  readonly negative: boolean;
  readonly most: bigint;
}

export function evenColumns({ measures, used, negative, most }: EvenRows): EvenColumns {
  const columns = signedColumns(used, negative);
  const gives = measures.map((own) => columns.map(({ row, sign }) => sign * (own[row] ?? 0n)));
  return {
    gives,
    together: columns.map((_, j) => gives.reduce((sum, own) => sum + (own[j] ?? 0n), 0n)),
    count: columns.length,
    most,
    limits: mostRows(columns.length, most),
    cost: weightsOf(columns.length, most).columns,
    ratesOf: (values) => ratesOf(columns, values, measures[0]?.length ?? 0),
  };
}

/** What each kind earns. */
export const scoresOf = (gives: EvenColumns['gives'], values: readonly bigint[]): readonly bigint[] =>
  gives.map((own) => own.reduce((sum, one, j) => sum + one * (values[j] ?? 0n), 0n));

/** What as many pieces of each kind have as take equally much together: the least such number of pieces. */
export function forAlikeCosts(measures: EvenRows['measures'], { each }: EvenCosts): EvenRows['measures'] {
  const all = each.reduce((common, one) => (common / divisor(common, one)) * one, 1n);
  return measures.map((own, k) => own.map((count) => (count * all) / (each[k] ?? 1n)));
}
