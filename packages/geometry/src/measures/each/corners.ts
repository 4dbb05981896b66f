// Corners by the counting convention: vertices, and the tips of cones with them unless only flat solids count.

import type { MeasureDefinition } from '../measure.ts';
import { schoolCounts } from '../school-counts.ts';
import { countMeasure } from './count.ts';

export const corners: MeasureDefinition = countMeasure(
  'corners',
  'C',
  (counts, convention) => schoolCounts(counts, convention).corners,
);
