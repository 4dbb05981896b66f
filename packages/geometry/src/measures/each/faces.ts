// Faces by the counting convention: flat faces, or every surface, curved ones too.

import type { MeasureDefinition } from '../measure.ts';
import { schoolCounts } from '../school-counts.ts';
import { countMeasure } from './count.ts';

export const faces: MeasureDefinition = countMeasure(
  'faces',
  'F',
  (counts, convention) => schoolCounts(counts, convention).faces,
);
