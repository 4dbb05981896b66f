// Parts of the footprint: how many pieces of ground that do not touch. Touching at a point joins.

import type { MeasureDefinition } from '../measure.ts';
import { byMethod, findingOf } from '../measure.ts';

export const footprintParts: MeasureDefinition = {
  id: 'footprint-parts',
  unit: 'count',
  measure: ({ footprint }) => findingOf(footprint, (facts) => byMethod(facts.parts, 'boundary-walk')),
};
