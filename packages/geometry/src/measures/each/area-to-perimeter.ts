// How much ground the way round it encloses: footprint over its outer perimeter, mm (mm2 for each mm).

import type { MeasureDefinition } from '../measure.ts';
import { ratioMeasure } from '../ratio.ts';
import { footprintArea } from './footprint-area.ts';
import { footprintPerimeter } from './footprint-perimeter.ts';

export const areaToPerimeter: MeasureDefinition = ratioMeasure(
  'area-to-perimeter',
  'mm',
  'k',
  { symbol: 'A', of: footprintArea },
  { symbol: 'P', of: footprintPerimeter },
);
