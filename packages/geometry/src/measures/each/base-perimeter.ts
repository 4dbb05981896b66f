// Outer perimeter of the base, all its parts together, mm. Gaps up to the allowance count as closed.

import type { MeasureDefinition } from '../measure.ts';
import { byMethod, findingOf } from '../measure.ts';

export const basePerimeter: MeasureDefinition = {
  id: 'base-perimeter',
  unit: 'mm',
  measure: ({ base }) => findingOf(base, (facts) => byMethod(facts.perimeterMm, facts.method)),
};
