// Pieces: how many there are.

import type { MeasureDefinition } from '../measure.ts';
import { findingOf } from '../measure.ts';
import { countOverPieces } from './count.ts';

export const pieces: MeasureDefinition = {
  id: 'pieces',
  unit: 'count',
  measure: ({ tally }) => findingOf(tally, (kinds) => countOverPieces(kinds, 'N', () => 1)),
};
