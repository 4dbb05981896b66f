// Volume: the volumes of all pieces together, mm3.

import type { MeasureDefinition } from '../measure.ts';
import { findingOf } from '../measure.ts';
import { sumOverPieces } from '../tally.ts';

export const volume: MeasureDefinition = {
  id: 'volume',
  unit: 'mm3',
  measure: ({ tally }) =>
    findingOf(tally, (kinds) =>
      sumOverPieces(kinds, 'V', 'mm3', 'sum-of-pieces', (solid) => ({
        value: solid.volumeMm3,
        steps: solid.workings.volume,
      })),
    ),
};
