// Inner perimeter of the footprint: the perimeters of its holes together, mm.

import type { MeasureDefinition } from '../measure.ts';
import { byMethod, findingOf } from '../measure.ts';

export const footprintInnerPerimeter: MeasureDefinition = {
  id: 'footprint-inner-perimeter',
  unit: 'mm',
  measure: ({ footprint }) => findingOf(footprint, (facts) => byMethod(facts.innerPerimeterMm, 'boundary-walk')),
};
