// Between the points table of a challenge and the rates of the points lab.

import type { CountingConvention } from '@cairnmark/geometry';
import type { LabData, PointsRow } from '@cairnmark/scoring';
import { exactSum } from '@cairnmark/scoring';
import { POINTS_ID } from '../facts/ids.ts';
import type { Challenge } from '../types.ts';
import type { LabRow } from './lab-rows.ts';

/**
 * The rates that the challenge has for these rows, and its measures that one piece by itself has nothing of. Rows on one
 * measure are added up in steps of the lab's row. What a whole build is held to (a cap, a floor, rounding at the end) is left
 * aside.
 */
export function todaysRates(
  { points }: Pick<Challenge, 'points'>,
  rows: readonly LabRow[],
): { readonly rates: readonly number[]; readonly others: readonly string[] } {
  const rateOf = ({ id, per }: LabRow): number =>
    exactSum(points.flatMap((row) => (row.measure === id ? [(row.points * per) / row.per] : [])));
  const others = points.filter(({ measure }) => !rows.some(({ id }) => id === measure)).map(({ measure }) => measure);
  return { rates: rows.map(rateOf), others: [...new Set(others)] };
}

/** The points table of these rates; a row of 0 points is left out. */
export const pointsTable = (rows: readonly LabRow[], rates: readonly number[]): readonly PointsRow[] =>
  rows.flatMap(({ id, per }, j): readonly PointsRow[] => {
    const points = rates[j] ?? 0;
    return points === 0 ? [] : [{ id, measure: id, points, per, rounding: per === 1 ? 'none' : 'down' }];
  });

/** The data with the rows that are kept alone. */
export function withRows({ rows, kinds }: LabData, keep: (row: string) => boolean): LabData {
  const kept = rows.flatMap((row, j) => (keep(row) ? [j] : []));
  return {
    rows: kept.map((j) => rows[j] ?? ''),
    kinds: kinds.map((kind) => ({ ...kind, measures: kept.map((j) => kind.measures[j] ?? 0) })),
  };
}

/**
 * The challenge under other points: points come first in its ranking, and of groups alike in points what decided before
 * decides. Everything else stays as it is, its id and its name included.
 */
export function underPoints(
  challenge: Challenge,
  points: readonly PointsRow[],
  counting: CountingConvention,
): Challenge {
  const { first, tieBreaks } = challenge.ranking;
  const keys = [first, ...tieBreaks];
  const byPoints = keys.find(({ by }) => by === POINTS_ID) ?? { by: POINTS_ID, better: 'more', roundTo: 0 };
  return {
    ...challenge,
    points,
    counting,
    ranking: { first: byPoints, tieBreaks: keys.filter(({ by }) => by !== POINTS_ID) },
  };
}
