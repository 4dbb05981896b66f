// A fact of a report: the value that counts and where it came from, with predicted, observed and decided side by side.

import type { Fact, Unit } from '@cairnmark/geometry';
import type { FactSource, ReportedFact } from '../report-types.ts';
import type { Attempt, Decision } from '../types.ts';
import { decisionOn } from './decisions.ts';

/** A value that counts unless a person decides otherwise. */
export interface Counted {
  readonly value: number;
  readonly tolerance: number;
  /** Parts of the tolerance that other builds may share, by reading. */
  readonly errors: Readonly<Record<string, number>>;
  readonly source: FactSource;
}

/** What the fact is about, and what else is known beside the value that counts. */
export interface About {
  readonly id: string;
  readonly unit: Unit;
  readonly predicted: Fact | null;
  readonly observed: ReportedFact['observed'];
  /** The error of a decided value that replaces none. */
  readonly statedError: number;
}

/** `counted`: what counts when nobody decided on it; null: not measured. */
export function reportedFact(
  { id, unit, predicted, observed, statedError }: About,
  counted: Counted | null,
  { decisions }: Attempt,
): ReportedFact {
  const decided = decisionOn(id, decisions);
  const final = decided === null ? counted : decidedValue(decided, counted, statedError);
  return {
    id,
    unit,
    value: final?.value ?? null,
    tolerance: final?.tolerance ?? 0,
    errors: final?.errors ?? {},
    source: final?.source ?? null,
    predicted,
    observed,
    decided,
  };
}

/** A count, which is exact; null: not known. */
export const plainFact = (id: string, value: number | null, source: FactSource): ReportedFact => ({
  id,
  unit: 'count',
  value,
  tolerance: 0,
  errors: {},
  source: value === null ? null : source,
  predicted: null,
  observed: null,
  decided: null,
});

/** Deciding on a value makes no ruler better: the error of the value that it replaces stays, or the one stated for a reading. */
function decidedValue({ value }: Decision, replaced: Counted | null, statedError: number): Counted {
  return { value, tolerance: replaced?.tolerance ?? statedError, errors: replaced?.errors ?? {}, source: 'decided' };
}
