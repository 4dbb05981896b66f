// The points table, row by row: how many times `per` goes into the measure, rounded by the row's rule, times its points.
// Rules [P..] of RULES.md. Every number shown is the number used: times, points and sum are fixed to a millionth.

import type { Millionths } from '../rounding/fixed.ts';
import { fromMillionths, MILLIONTHS_IN_ONE, toMillionths } from '../rounding/fixed.ts';
import { divideRounded } from '../rounding/round.ts';
import { sumIfKnown } from '../rounding/sum.ts';
import type { Facts, PointsLine, PointsRow } from '../types.ts';

export interface PointsTable {
  /** One line a row, in the order of the rows. */
  readonly lines: readonly PointsLine[];
  /** null: not known, since one of the lines is not. */
  readonly sum: number | null;
}

/** What the facts earn. Throws RangeError when a row's `per` is not positive. */
export function pointsLines(rows: readonly PointsRow[], facts: Facts): PointsTable {
  const lines = rows.map((row) => pointsLine(row, facts));
  return { lines, sum: sumIfKnown(lines.map((line) => line.points)) };
}

function pointsLine(row: PointsRow, facts: Facts): PointsLine {
  const value = facts.get(row.measure)?.value ?? null;
  const named = { row: row.id, measure: row.measure };
  if (value === null) return { ...named, value: null, times: null, points: mayTake(row) ? null : 0, limited: null };
  const { times, points, limited } = rowPoints(row, toMillionths(value));
  return { ...named, value, times: fromMillionths(times), points: fromMillionths(points), limited };
}

/** True for a row that gives less than 0 for some value of its measure, which is never below 0 itself. */
function mayTake({ points, capPoints = 0, floorPoints = Number.NEGATIVE_INFINITY }: PointsRow): boolean {
  return capPoints < 0 || (points < 0 && floorPoints < 0);
}

interface RowPoints extends Pick<PointsLine, 'limited'> {
  readonly times: Millionths;
  readonly points: Millionths;
}

/** What a row gives for a value of its measure. */
export function rowPoints(row: PointsRow, value: Millionths): RowPoints {
  const times = timesIn(value, toMillionths(row.per), row);
  const earned = divideRounded(times * toMillionths(row.points), MILLIONTHS_IN_ONE, 'nearest');
  return { times, ...limit(earned, row) };
}

/** How many times `per` goes into the value, in millionths: of a whole number unless the row does not round. */
function timesIn(value: Millionths, per: Millionths, { rounding }: PointsRow): Millionths {
  return rounding === 'none'
    ? divideRounded(value * MILLIONTHS_IN_ONE, per, 'nearest')
    : divideRounded(value, per, rounding) * MILLIONTHS_IN_ONE;
}

function limit(earned: Millionths, { capPoints, floorPoints }: PointsRow): Omit<RowPoints, 'times'> {
  const cap = capPoints === undefined ? earned : toMillionths(capPoints);
  const floor = floorPoints === undefined ? earned : toMillionths(floorPoints);
  if (earned > cap) return { points: cap, limited: 'cap' };
  if (earned < floor) return { points: floor, limited: 'floor' };
  return { points: earned, limited: null };
}
