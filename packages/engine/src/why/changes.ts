// What changed between two attempts of a group: the facts whose counting value is another one, and the pieces.

import type { Report, ReportedFact } from '../report-types.ts';

export interface Change {
  readonly fact: string;
  readonly before: number | null;
  readonly after: number | null;
  /** Root of the sum of the squares of both tolerances: a smaller change may be the ruler's. */
  readonly error: number;
}

/** Facts in the order of the report. A fact that only one of the two has is compared with "not measured". */
export function changesSince(before: Report, after: Report): readonly Change[] {
  const old = new Map(before.facts.map((fact) => [fact.id, fact]));
  return after.facts.map((fact) => changeOf(old.get(fact.id), fact)).filter((change) => change.before !== change.after);
}

const changeOf = (before: ReportedFact | undefined, after: ReportedFact): Change => ({
  fact: after.id,
  before: before?.value ?? null,
  after: after.value,
  error: Math.hypot(before?.tolerance ?? 0, after.tolerance),
});
