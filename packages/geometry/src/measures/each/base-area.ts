// Base: area of the ground that the build stands on, by the definition the challenge chose, mm2.

import type { MeasureDefinition } from '../measure.ts';
import { byMethod, findingOf } from '../measure.ts';

export const baseArea: MeasureDefinition = {
  id: 'base-area',
  unit: 'mm2',
  measure: ({ base }) => findingOf(base, (facts) => byMethod(facts.areaMm2, facts.method)),
};
