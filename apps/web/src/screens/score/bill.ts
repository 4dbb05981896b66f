// How the total comes about: what the lines of the card earn, and what else is added or taken away below them.

import type { Report } from '@cairnmark/engine';
import { exactSum, pointsOfRequirements } from '@cairnmark/scoring';
import { decimalsOf } from '../../parts/decimals.ts';
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
