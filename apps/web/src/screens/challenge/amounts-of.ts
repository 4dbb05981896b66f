// Amounts of a measure that a rule or a row may name, in the engine's unit: what is allowed, and what a new row starts with.

import { LENGTH_MM_MOST, MARK_MOST, POINTS_MOST, SECONDS_MOST, unitOf } from '@cairnmark/engine';
import type { Unit } from '@cairnmark/geometry';

export interface AmountLimits {
  readonly least: number;
  readonly most: number;
  readonly whole: boolean;
}

/** Of a limit of a rule. */
export function limitsOf(measure: string): AmountLimits {
  if (measure.startsWith(JUDGED)) return { least: 0, most: MARK_MOST, whole: false };
  const unit = unitOf(measure);
  return { least: 0, most: MOST[unit], whole: isWhole(measure) };
}

/** Of what points are given for every one of. `one`: one of the unit that the class reads. */
export function ratesOf(measure: string, one: number): AmountLimits {
  const { most, whole } = limitsOf(measure);
  return { least: whole ? 1 : FINEST_SHARE * one, most, whole };
}

/** What a new rule says of the measure until somebody types another. */
export function usualLimit(measure: string, one: number): number {
  if (measure.startsWith(JUDGED)) return 2;
  return USUAL_ONES[unitOf(measure)] * one;
}

/** Things come whole; penalties and ratios need not. */
const isWhole = (measure: string): boolean => unitOf(measure) === 'count' && measure !== 'earned:penalties';

const JUDGED = 'judged:';
/** Share of one unit. Finer than any ruler of a class. */
const FINEST_SHARE = 0.01;

/** Six figures of a count or a ratio are more than any build has. */
const MOST: Readonly<Record<Unit, number>> = {
  mm: LENGTH_MM_MOST,
  mm2: LENGTH_MM_MOST ** 2,
  mm3: LENGTH_MM_MOST ** 3,
  count: POINTS_MOST,
  ratio: POINTS_MOST,
  s: SECONDS_MOST,
  rad: Math.PI / 2,
};

/** Common practice, no source. */
const USUAL_ONES: Readonly<Record<Unit, number>> = { mm: 20, mm2: 25, mm3: 100, count: 5, ratio: 2, s: 10, rad: 15 };
