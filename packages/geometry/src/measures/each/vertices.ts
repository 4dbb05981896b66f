// Vertices of all pieces, the tips of cones left out, whatever the counting convention.

import type { MeasureDefinition } from '../measure.ts';
import { countMeasure } from './count.ts';

export const vertices: MeasureDefinition = countMeasure('vertices', 'C', (counts) => counts.vertices);
