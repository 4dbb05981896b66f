// Courtyard: area of the holes that the footprint encloses, mm2. Gaps up to the allowance close it.

import type { MeasureDefinition } from '../measure.ts';
import { byMethod, findingOf } from '../measure.ts';

export const courtyardArea: MeasureDefinition = {
  id: 'courtyard-area',
  unit: 'mm2',
  measure: ({ footprint }) => findingOf(footprint, (facts) => byMethod(facts.courtyardMm2, 'boundary-walk')),
};
