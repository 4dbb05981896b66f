// How slender the build is: its height over the width of its base, no unit.

import type { MeasureDefinition } from '../measure.ts';
import { ratioMeasure } from '../ratio.ts';
import { baseWidth } from './base-width.ts';
import { height } from './height.ts';

export const heightToWidth: MeasureDefinition = ratioMeasure(
  'height-to-width',
  'ratio',
  'k',
  { symbol: 'h', of: height },
  { symbol: 'w', of: baseWidth },
);
