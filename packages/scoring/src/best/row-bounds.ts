// What rows of a points table can give at most for measures that are not settled yet, in plain numbers. Never too little.

import { rowPoints } from '../points/lines.ts';
import { FIXED_TO, fromMillionths, toMillionths } from '../rounding/fixed.ts';
import { exactSum } from '../rounding/sum.ts';
import type { PointsRow } from '../types.ts';

export const HEIGHT = 'height';
export const BASE = 'base-area';

/** What the rows give for these totals, one a row. */
export function pointsFor(rows: readonly PointsRow[], totals: readonly number[]): number {
  return exactSum(rows.map((row, j) => fromMillionths(rowPoints(row, toMillionths(totals[j] ?? 0)).points)));
}

/** Points for one more of the measure. */
export const slopeOf = ({ points, per }: PointsRow): number => points / per;

/** Whether the row gives its slope times the measure, but for rounding. */
export const isStraight = ({ capPoints, floorPoints }: PointsRow): boolean =>
  capPoints === undefined && floorPoints === undefined;

/** How far rounding can lift a row over its straight line, with the fixing of value, times and points to a millionth. */
export function liftOf({ points, per, rounding }: PointsRow): number {
  const size = Math.abs(points);
  const lifts = { none: 0, down: points < 0 ? size : 0, nearest: size / 2, up: points > 0 ? size : 0 };
  return lifts[rounding] + FIXED_TO * (size / per + size + 1);
}

/** The most that a row gives when its measure lies between two totals. */
export function mostOfRow(row: PointsRow, least: number, most: number): number {
  // A row without points may have a floor all the same.
  const total = row.points > 0 ? most : least;
  if (!Number.isFinite(total)) return row.capPoints ?? Number.POSITIVE_INFINITY;
  return fromMillionths(rowPoints(row, toMillionths(total)).points);
}
