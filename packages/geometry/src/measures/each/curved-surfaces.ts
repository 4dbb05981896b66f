// Curved surfaces of all pieces, whatever the counting convention.

import type { MeasureDefinition } from '../measure.ts';
import { countMeasure } from './count.ts';

export const curvedSurfaces: MeasureDefinition = countMeasure(
  'curved-surfaces',
  'R',
  (counts) => counts.curvedSurfaces,
);
