// The measuring error of a sum of points. A reading that several rows are built on is off by the same in all of them, so
// its parts add up, signs and all; what is a measure's own adds in quadrature (JCGM 100:2008, 5.2.2 and 5.1.2; from
// memory). Rounding is left out: it makes steps, and the error of a step is either nothing or a whole one.

import type { Facts, PointsLine, PointsRow, ScoringFact } from '../types.ts';

/** In points. As with a fact, the squares of `errors` sum to no more than the tolerance squared. */
export interface PointsErrors {
  /** Expanded. */
  readonly tolerance: number;
  /** The parts of it by the reading they come from, which other builds may share. */
  readonly errors: Readonly<Record<string, number>>;
}

/**
 * The error of the sum of `lines`, from the errors of the facts.
 * A line that was held at its cap or floor, or not measured, carries none.
 */
export function pointsErrors(rows: readonly PointsRow[], lines: readonly PointsLine[], facts: Facts): PointsErrors {
  const parts = new Map<string, number>();
  const own: number[] = [];
  for (const [measure, rate] of pointsPerUnit(rows, lines)) {
    const fact = facts.get(measure);
    if (fact === undefined) continue;
    for (const [reading, error] of Object.entries(fact.errors)) {
      parts.set(reading, (parts.get(reading) ?? 0) + rate * error);
    }
    own.push(rate * ownError(fact));
  }
  return { tolerance: Math.hypot(...parts.values(), ...own), errors: Object.fromEntries(parts) };
}

/** By measure: what one more unit of it would add to the sum. */
function pointsPerUnit(rows: readonly PointsRow[], lines: readonly PointsLine[]): ReadonlyMap<string, number> {
  const free = new Set(lines.filter((line) => line.times !== null && line.limited === null).map((line) => line.row));
  const rates = new Map<string, number>();
  for (const { id, measure, points, per } of rows) {
    if (free.has(id)) rates.set(measure, (rates.get(measure) ?? 0) + points / per);
  }
  return rates;
}

/** What the shared parts leave of the tolerance. */
function ownError({ tolerance, errors }: ScoringFact): number {
  const sharedSq = Object.values(errors).reduce((sum, error) => sum + error ** 2, 0);
  return Math.sqrt(Math.max(0, tolerance ** 2 - sharedSq));
}
