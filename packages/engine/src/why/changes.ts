// What changed between two attempts of a group: the facts whose counting value is another one, and the pieces.

import { areNear } from '@cairnmark/scoring';
import type { Report, ReportedFact } from '../report-types.ts';

export interface Change {
  readonly fact: string;
  readonly before: number | null;
  readonly after: number | null;
  /** How exactly the two are read: the root of the sum of the squares of both tolerances. */
  readonly error: number;
  /** True when the change may be the ruler's: sizes of the kit that both are measured with err alike, and cancel. */
  readonly withinError: boolean;
}

/** Facts in the order of the reports. A fact that only one of the two has is compared with "not measured". */
export function changesSince(before: Report, after: Report): readonly Change[] {
  const [old, present] = [before, after].map(({ facts }) => new Map(facts.map((fact) => [fact.id, fact])));
  const ids = new Set([...before.facts, ...after.facts].map(({ id }) => id));
  return [...ids]
    .map((id) => changeOf(id, old?.get(id), present?.get(id)))
    .filter((change) => change.before !== change.after);
}

function changeOf(fact: string, before: ReportedFact | undefined, after: ReportedFact | undefined): Change {
  const [old, present] = [readingOf(before), readingOf(after)];
  return {
    fact,
    before: old?.value ?? null,
    after: present?.value ?? null,
    error: Math.hypot(old?.tolerance ?? 0, present?.tolerance ?? 0),
    withinError: old !== null && present !== null && areNear(old, present),
  };
}

/** null: there is no value. */
function readingOf(fact: ReportedFact | undefined) {
  if (fact === undefined || fact.value === null) return null;
  const { value, tolerance, errors } = fact;
  return { value, tolerance, errors };
}
