// Edges by the counting convention: straight edges, or rims as well.

import type { MeasureDefinition } from '../measure.ts';
import { schoolCounts } from '../school-counts.ts';
import { countMeasure } from './count.ts';

export const edges: MeasureDefinition = countMeasure(
  'edges',
  'E',
  (counts, convention) => schoolCounts(counts, convention).edges,
);
