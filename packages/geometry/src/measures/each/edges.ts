// Edges by the counting convention: straight edges, or rims as well.

import type { MeasureDefinition } from '../measure.ts';
import { countMeasure } from './count.ts';

export const edges: MeasureDefinition = countMeasure('edges', 'E', (counts, convention) =>
  convention === 'all-surfaces' ? counts.straightEdges + counts.curvedEdges : counts.straightEdges,
);
