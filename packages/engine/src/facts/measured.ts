// The measures of a build as a report holds them: predicted, observed and decided side by side, and the one that counts.

import type { Fact } from '@cairnmark/geometry';
import type { Attempt, Challenge, Decision, ReportedFact } from '../types.ts';
import type { Counted } from './height.ts';
import { countedHeight, observedHeight, predictedValue } from './height.ts';

/** One fact of the build. Of all measures only the height is observed; any of them may be decided. */
export function measuredFact(predicted: Fact, { observed, decisions }: Attempt, challenge: Challenge): ReportedFact {
  const { id, unit } = predicted;
  const isHeight = id === 'height';
  const decided = decisionOn(id, decisions);
  const undecided = isHeight ? countedHeight(predicted, observed, challenge) : predictedValue(predicted);
  const counted =
    decided === null ? undecided : decidedValue(decided, undecided, isHeight ? challenge.measuringErrorMm : 0);
  return {
    id,
    unit,
    value: counted?.value ?? null,
    tolerance: counted?.tolerance ?? 0,
    source: counted?.source ?? null,
    predicted,
    observed: isHeight ? observedHeight(observed, challenge) : null,
    decided,
  };
}

/** The last decision on the measure that was not taken back. */
function decisionOn(measure: string, decisions: readonly Decision[]): Decision | null {
  return (
    decisions.filter((decision) => decision.measure === measure && decision.takenBack === undefined).at(-1) ?? null
  );
}

/** Deciding on a value makes no ruler better: the error of the value that it replaces stays, or the one stated for a reading. */
function decidedValue({ value }: Decision, replaced: Counted | null, statedError: number): Counted {
  return { value, tolerance: replaced?.tolerance ?? statedError, source: 'decided' };
}
