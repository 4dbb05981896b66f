// Kinds: how many different kinds of piece there are; the parts of the working name them.

import type { MeasureDefinition } from '../measure.ts';
import { findingOf } from '../measure.ts';
import type { KindTally } from '../tally.ts';
import type { Working, WorkingPart } from '../types.ts';

export const kinds: MeasureDefinition = {
  id: 'kinds',
  unit: 'count',
  measure: ({ tally }) => findingOf(tally, countOfKinds),
};

function countOfKinds(tallied: readonly KindTally[]): { value: number; working: Working } {
  const parts = tallied.map(({ kind }): WorkingPart => ({ kind, times: 1, each: 1, unit: 'count', steps: [] }));
  return { value: parts.length, working: { method: 'count', steps: [], parts } };
}
