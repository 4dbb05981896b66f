// The rows of a points table over the pieces of a task: what a tower's measures are, what it earns, and what it could still
// earn at most. Rows without cap or floor are bounded together by their straight lines, all rows also one by one.

import type { PointsRow } from '../types.ts';
import { besideWays, standingWays } from './finishing.ts';
import type { Placed } from './placing.ts';
import type { Prepared, WayOf } from './prepared.ts';
import type { MostOf } from './room-below.ts';
import { mostOf } from './room-below.ts';
import { BASE, HEIGHT, isStraight, liftOf, mostOfRow, slopeOf } from './row-bounds.ts';

export interface PointsModel {
  readonly rows: readonly PointsRow[];
  /** Measure of each row, of one piece of each kind. */
  readonly perPiece: readonly (readonly number[])[];
  /** Points for one mm of height, by the straight rows. */
  readonly heightSlope: number;
  /** Points for one piece of a kind wherever it is, and for one placed so, by the straight rows. */
  readonly pieceGain: (kind: number) => number;
  readonly wayGain: (way: WayOf) => number;
  /** Ways in which pieces stand beside; empty where the task has none. */
  readonly aside: readonly WayOf[];
  /** What each row measures of a tower by itself. */
  readonly totalsOf: (placed: Placed, used: readonly number[]) => number[];
  /** The most that these rows give when `heightMm` and the sum over pieces go up by no more than said. */
  readonly most: (totals: readonly number[], more: More) => number;
}

export interface More {
  readonly heightMm: number;
  /** Points that pieces and height bring by the straight rows. */
  readonly gain: number;
  /** What the pieces bring to the measure of a row. */
  readonly measure: (row: number) => number;
  readonly baseMm2: readonly [least: number, most: number];
}

export function pointsModel(prepared: Prepared, rows: readonly PointsRow[]): PointsModel {
  const { task } = prepared;
  const perPiece = rows.map(({ measure }) =>
    task.kinds.map(({ measures }) => (Object.hasOwn(measures, measure) ? (measures[measure] ?? 0) : 0)),
  );
  const slopes = rows.map((row) => (isStraight(row) ? slopeOf(row) : 0));
  const sum = (of: (row: PointsRow, j: number) => number): number => rows.reduce((all, row, j) => all + of(row, j), 0);
  const heightSlope = sum(({ measure }, j) => (measure === HEIGHT ? (slopes[j] ?? 0) : 0));
  const lift = sum((row) => (isStraight(row) ? liftOf(row) : 0));
  const pieceGain = (kind: number): number => sum((_, j) => (slopes[j] ?? 0) * (perPiece[j]?.[kind] ?? 0));
  return {
    rows,
    perPiece,
    heightSlope,
    pieceGain,
    wayGain: ({ kind, up }) => pieceGain(kind) + heightSlope * up.heightMm,
    aside: task.beside ? asideWays(prepared, rows) : [],
    totalsOf: (placed, used) =>
      rows.map(({ measure }, j) => {
        if (measure === HEIGHT) return placed.heightMm;
        if (measure === BASE) return placed.way.up.baseMm2;
        return used.reduce((all, count, kind) => all + count * (perPiece[j]?.[kind] ?? 0), 0);
      }),
    most: (totals, { heightMm, gain, measure, baseMm2 }) => {
      const each = rows.map((row, j) => {
        const total = totals[j] ?? 0;
        if (row.measure === HEIGHT) return mostOfRow(row, total, total + heightMm);
        if (row.measure === BASE) return mostOfRow(row, ...baseMm2);
        return mostOfRow(row, total, total + measure(j));
      });
      const together = sum((row, j) => {
        if (!isStraight(row) || row.measure === BASE) return each[j] ?? 0;
        return (slopes[j] ?? 0) * (totals[j] ?? 0);
      });
      return Math.min(
        sum((_, j) => each[j] ?? 0),
        together + gain + lift,
      );
    },
  };
}

/** Where ground earns or costs points, or height costs some, every way; else one of each kind will do. */
const asideWays = (prepared: Prepared, rows: readonly PointsRow[]): readonly WayOf[] =>
  rows.some(({ measure, points }) => measure === BASE || (measure === HEIGHT && points < 0))
    ? standingWays(prepared)
    : [...besideWays(prepared).values()];

/** The best that so many pieces bring of what each kind does; `forced` of them have to be taken, gain or loss. */
export function gainLeft(order: MostOf, left: Left): number {
  let [sum, taken] = [0, 0];
  for (const { kind, value } of order) {
    const most = Math.min(left.room - taken, (left.stock[kind] ?? 0) - (left.used[kind] ?? 0));
    const count = value > 0 ? most : Math.min(most, Math.max(0, left.forced - taken));
    sum += count * value;
    taken += count;
  }
  return sum;
}

export interface Left {
  readonly stock: readonly number[];
  readonly used: readonly number[];
  readonly room: number;
  readonly forced: number;
}

/** What each kind brings at most, in one place or the other. */
export const eitherOf = (one: readonly WayOf[], gainOne: (way: WayOf) => number, other: MostOf): MostOf => {
  const first = mostOf(one, gainOne);
  const kinds = new Set([...first, ...other].map(({ kind }) => kind));
  const valueIn = (order: MostOf, kind: number): number =>
    order.find((each) => each.kind === kind)?.value ?? Number.NEGATIVE_INFINITY;
  return [...kinds]
    .map((kind) => ({ kind, value: Math.max(valueIn(first, kind), valueIn(other, kind)) }))
    .sort((a, b) => b.value - a.value);
};
