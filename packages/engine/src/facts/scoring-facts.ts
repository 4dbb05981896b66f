import type { Facts } from '@cairnmark/scoring';
import type { ReportedFact } from '../report-types.ts';

/** The facts of a report as scoring asks for them: the value that counts, with unit and tolerance. */
export function scoringFacts(facts: readonly ReportedFact[]): Facts {
  return new Map(facts.map(({ id, value, unit, tolerance, errors }) => [id, { id, value, unit, tolerance, errors }]));
}
