// Counts over pieces: each solid carries five whole numbers and its apexes; every count of a build is a sum of these.
// The pieces are counted as they are: two faces that touch are still two faces.

import type { Counts } from '../../solids/types.ts';
import type { MeasureDefinition } from '../measure.ts';
import { findingOf } from '../measure.ts';
import type { KindTally } from '../tally.ts';
import { sumOverPieces } from '../tally.ts';
import type { CountingConvention, MeasureId, Working } from '../types.ts';

/** A measure that adds up one number a piece, by the counting convention of the challenge. */
export function countMeasure(
  id: MeasureId,
  symbol: string,
  count: (counts: Counts, convention: CountingConvention) => number,
): MeasureDefinition {
  return {
    id,
    unit: 'count',
    measure: ({ tally, options }) =>
      findingOf(tally, (kinds) => countOverPieces(kinds, symbol, (counts) => count(counts, options.counting))),
  };
}

/** The sum of `count` over the pieces, with its working. */
export function countOverPieces(
  kinds: readonly KindTally[],
  symbol: string,
  count: (counts: Counts) => number,
): { value: number; working: Working } {
  return sumOverPieces(kinds, symbol, 'count', 'count', (solid) => ({ value: count(solid.counts), steps: [] }));
}
