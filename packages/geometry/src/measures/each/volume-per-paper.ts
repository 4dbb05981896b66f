// How much room the paper holds: volume over paper, mm (mm3 for each mm2).

import type { MeasureDefinition } from '../measure.ts';
import { ratioMeasure } from '../ratio.ts';
import { paper } from './paper.ts';
import { volume } from './volume.ts';

export const volumePerPaper: MeasureDefinition = ratioMeasure(
  'volume-per-paper',
  'mm',
  'k',
  { symbol: 'V', of: volume },
  { symbol: 'S', of: paper },
);
