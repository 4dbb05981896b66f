// The measures of a build as a report holds them. Of all of them only the height is observed; any may be decided.

import type { Fact } from '@cairnmark/geometry';
import type { ReportedFact } from '../report-types.ts';
import type { Attempt, Challenge, Group } from '../types.ts';
import type { Counted } from './fact.ts';
import { reportedFact } from './fact.ts';
import { countedHeight, observedHeight } from './height.ts';

/** One fact of the build. */
export function measuredFact(predicted: Fact, attempt: Attempt, challenge: Challenge, group: Group): ReportedFact {
  const { id, unit } = predicted;
  const isHeight = id === 'height';
  const model = predictedValue(predicted, attempt, group);
  const counted = isHeight ? countedHeight(model, attempt.observed, challenge) : model;
  const observed = isHeight ? observedHeight(attempt.observed, challenge) : null;
  const statedError = isHeight ? challenge.measuringErrorMm : 0;
  return reportedFact({ id, unit, predicted, observed, statedError }, counted, attempt);
}

/** The prediction as a value that counts; null when the layout does not show it. */
function predictedValue(fact: Fact, attempt: Attempt, group: Group): Counted | null {
  if (fact.status !== 'measured') return null;
  const { value, tolerance, errors } = fact;
  return { value, tolerance, errors: named(errors, attempt, group), source: 'predicted' };
}

/**
 * Readings by whose they are. The sizes of the kit are read once for the whole class; those that a group read off its own
 * pieces are shared by its attempts alone; what was read off a build, by nobody else.
 */
function named(
  errors: Readonly<Record<string, number>>,
  { id: attempt }: Attempt,
  { id: group, measured }: Group,
): Readonly<Record<string, number>> {
  const nameOf = (reading: string): string => {
    if (!reading.includes('/')) return `${attempt}:${reading}`;
    const [kind = ''] = reading.split('/');
    return Object.hasOwn(measured, kind) ? `${group}:${reading}` : reading;
  };
  return Object.fromEntries(Object.entries(errors).map(([reading, error]) => [nameOf(reading), error]));
}
