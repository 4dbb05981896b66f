// Outer perimeter of the footprint, all its parts together, mm. Gaps up to the allowance count as closed.

import type { MeasureDefinition } from '../measure.ts';
import { byMethod, findingOf } from '../measure.ts';

export const footprintPerimeter: MeasureDefinition = {
  id: 'footprint-perimeter',
  unit: 'mm',
  measure: ({ footprint }) => findingOf(footprint, (facts) => byMethod(facts.outerPerimeterMm, 'boundary-walk')),
};
