// What the programmes about even points share: what the rates that may be given give each kind, and their limits.

import type { AtLeast } from './exact/tableau.ts';
import { mostRows, ratesOf, signedColumns, weightsOf } from './smallest-rule.ts';

export interface EvenRows {
  /** By kind, of all rows. */
  readonly measures: readonly (readonly bigint[])[];
  /** Positions of the rows that points are looked for. */
  readonly used: readonly number[];
  readonly negative: boolean;
  readonly most: bigint;
}

/** Columns whose values from 0 on stand for rates. */
export interface EvenColumns {
  /** By kind: what a step of each column gives it, and what it has when all columns are 0. */
  readonly gives: readonly (readonly bigint[])[];
  readonly start: readonly bigint[];
  readonly count: number;
  /** No column above its limit, and all kinds together earn something. */
  readonly limits: readonly AtLeast[];
  /** The rates of all rows that the columns stand for. */
  readonly ratesOf: (columns: readonly bigint[]) => readonly bigint[];
}

/** A column a row, from the lowest rate on: fewest columns, but the sum of the rates is none of them. */
export function rateColumns({ measures, used, negative, most }: EvenRows): EvenColumns {
  const shift = negative ? most : 0n;
  const gives = measures.map((own) => used.map((row) => own[row] ?? 0n));
  const columns = used.map((row) => ({ row, sign: 1n }));
  return withLimits({
    gives,
    start: gives.map((own) => -shift * sumOf(own)),
    count: used.length,
    limits: mostRows(used.length, most + shift),
    ratesOf: (values) =>
      ratesOf(
        columns,
        values.map((value) => value - shift),
        measures[0]?.length ?? 0,
      ),
  });
}

/** What rows give and what they take apart, so that the sum of the rates is the sum of the columns. */
export function sumColumns({ measures, used, negative, most }: EvenRows): EvenColumns {
  const columns = signedColumns(used, negative);
  return withLimits({
    gives: measures.map((own) => columns.map(({ row, sign }) => sign * (own[row] ?? 0n))),
    start: measures.map(() => 0n),
    count: columns.length,
    limits: mostRows(columns.length, most),
    ratesOf: (values) => ratesOf(columns, values, measures[0]?.length ?? 0),
  });
}

function withLimits(columns: EvenColumns): EvenColumns {
  const { gives, start, count, limits } = columns;
  const together = Array.from({ length: count }, (_, j) => sumOf(gives.map((own) => own[j] ?? 0n)));
  return { ...columns, limits: [...limits, { of: together, limit: 1n - sumOf(start) }] };
}

/** Costs of `sumColumns` that put the smallest sum first, then the rows that stand first. */
export const sumCost = ({ count }: EvenColumns, { most }: EvenRows): readonly bigint[] =>
  weightsOf(count, most).columns;

/** What each kind earns by rates of all rows. */
export const scoresOf = ({ measures }: EvenRows, rates: readonly bigint[]): readonly bigint[] =>
  measures.map((own) => sumOf(own.map((one, j) => one * (rates[j] ?? 0n))));

export const sumOf = (values: readonly bigint[]): bigint => values.reduce((sum, one) => sum + one, 0n);
