// Straight edges of all pieces, whatever the counting convention.

import type { MeasureDefinition } from '../measure.ts';
import { countMeasure } from './count.ts';

export const straightEdges: MeasureDefinition = countMeasure('straight-edges', 'E', (counts) => counts.straightEdges);
