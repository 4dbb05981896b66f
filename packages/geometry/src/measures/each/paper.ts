// Paper: the surface of all pieces together, mm2. It is the net area without tabs; of a ball it is the surface itself.

import type { Solid } from '../../solids/types.ts';
import type { MeasureDefinition } from '../measure.ts';
import { findingOf } from '../measure.ts';
import type { Share } from '../tally.ts';
import { sumOverPieces } from '../tally.ts';

export const paper: MeasureDefinition = {
  id: 'paper',
  unit: 'mm2',
  measure: ({ tally }) => findingOf(tally, (kinds) => sumOverPieces(kinds, 'S', 'mm2', 'sum-of-pieces', surfaceShare)),
};

/** What one piece adds to the surface, mm2. */
export const surfaceShare = (solid: Solid): Share => ({ value: solid.surfaceMm2, steps: solid.workings.surface });
