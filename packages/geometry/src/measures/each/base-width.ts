// Width of the base: the least width of its convex hull, by the definition the challenge chose, mm. The least lateral
// dimension of slenderness ratios.

import type { MeasureDefinition } from '../measure.ts';
import { byMethod, findingOf } from '../measure.ts';

export const baseWidth: MeasureDefinition = {
  id: 'base-width',
  unit: 'mm',
  measure: ({ base }) => findingOf(base, (facts) => byMethod(facts.widthMm, 'hull')),
};
