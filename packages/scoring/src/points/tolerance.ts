// The measuring error of a sum of points. Rows on one measure read the same number, so their errors add up; errors of
// different measures are taken as independent and add in quadrature (JCGM 100:2008, 5.2 and 5.1.2 equation 10).
// Rounding is left out: it makes steps, and the error of a step is either nothing or a whole one.

import type { Facts, PointsLine, PointsRow } from '../types.ts';

/**
 * Expanded tolerance of the sum of `lines`, in points, from the tolerances of the facts.
 * A line that was held at its cap or floor, or not measured, carries none.
 */
export function pointsTolerance(rows: readonly PointsRow[], lines: readonly PointsLine[], facts: Facts): number {
  const free = new Set(lines.filter((line) => line.times !== null && line.limited === null).map((line) => line.row));
  const pointsPerUnit = new Map<string, number>();
  for (const row of rows) {
    if (!free.has(row.id)) continue;
    pointsPerUnit.set(row.measure, (pointsPerUnit.get(row.measure) ?? 0) + row.points / row.per);
  }
  const errors = [...pointsPerUnit].map(([measure, rate]) => rate * (facts.get(measure)?.tolerance ?? 0));
  return Math.hypot(...errors);
}
