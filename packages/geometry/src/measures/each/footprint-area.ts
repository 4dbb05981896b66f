// Footprint: area of the union of the outlines of all pieces, seen straight from above, mm2.

import type { MeasureDefinition } from '../measure.ts';
import { byMethod, findingOf } from '../measure.ts';

export const footprintArea: MeasureDefinition = {
  id: 'footprint-area',
  unit: 'mm2',
  measure: ({ footprint }) => findingOf(footprint, (facts) => byMethod(facts.areaMm2, 'boundary-walk')),
};
