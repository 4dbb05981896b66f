// How the total comes about: what the lines of the card earn, and what else is added or taken away below them.

import type { Report } from '@cairnmark/engine';
import { exactSum, pointsOfRequirements } from '@cairnmark/scoring';
import type { ScoreLines } from './lines.ts';

export interface Bill {
  /** Of rules kept and broken; null: not known, since a rule that may cost points could not be looked at. */
  readonly rules: number | null;
  /** Given or taken by hand. */
  readonly byHand: number;
  /** null: nothing counts, which is not 0, or it is not known. */
  readonly total: number | null;
  /** Decimals that all points of the card are shown with, so that they line up. */
  readonly decimals: number;
}

export function billOf(report: Report, { scoring }: ScoreLines): Bill {
  const rules = pointsOfRequirements(report.requirements);
  const byHand = exactSum(report.adjustments.map(({ points }) => points));
  const all = [rules, byHand, report.total, ...scoring.map(({ points }) => points)];
  return { rules, byHand, total: report.total, decimals: decimalsOf(all) };
}

/** Points that are paid out in fractions have few: more than this is shown rounded. */
const DECIMALS_MOST = 3;
/** No unit. What is left of a whole number after arithmetic in doubles, at the sizes of points. */
const WHOLE_SLACK = 1e-6;

/** As many as the value with the most of them needs. */
export function decimalsOf(values: readonly (number | null)[]): number {
  let decimals = 0;
  while (decimals < DECIMALS_MOST && values.some((value) => !isWhole((value ?? 0) * 10 ** decimals))) decimals += 1;
  return decimals;
}

const isWhole = (value: number): boolean => Math.abs(value - Math.round(value)) <= WHOLE_SLACK;
