// Curved edges (rims) of all pieces, whatever the counting convention.

import type { MeasureDefinition } from '../measure.ts';
import { countMeasure } from './count.ts';

export const curvedEdges: MeasureDefinition = countMeasure('curved-edges', 'R', (counts) => counts.curvedEdges);
