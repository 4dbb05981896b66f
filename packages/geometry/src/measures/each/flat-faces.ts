// Flat faces of all pieces, whatever the counting convention.

import type { MeasureDefinition } from '../measure.ts';
import { countMeasure } from './count.ts';

export const flatFaces: MeasureDefinition = countMeasure('flat-faces', 'F', (counts) => counts.flatFaces);
