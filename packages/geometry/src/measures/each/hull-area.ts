// Area of the convex hull of the footprint, mm2: of a string pulled tight round the build, seen from above.

import type { MeasureDefinition } from '../measure.ts';
import { byMethod, findingOf } from '../measure.ts';

export const hullArea: MeasureDefinition = {
  id: 'hull-area',
  unit: 'mm2',
  measure: ({ hull }) => findingOf(hull, (facts) => byMethod(facts.areaMm2, 'hull')),
};
