// Where a piece lies from another one, as people say it.

import type { Bench, Pieces } from '@cairnmark/editing';
import { buildStack } from '@cairnmark/geometry';

/** Offset of the axis of a piece from that of another, or from the middle of the table; x right, y back. */
export function offsetOf(pieces: Pieces, piece: number, of: number | 'table'): { xMm: number; yMm: number } {
  const here = pieces[piece];
  const there = of === 'table' ? undefined : pieces[of];
  return {
    xMm: difference(here?.xMm ?? 0, there?.xMm ?? 0),
    yMm: difference(here?.yMm ?? 0, there?.yMm ?? 0),
  };
}

/** The piece that it rests on; of several the one laid last. One that stands on the table is measured from the table. */
export function usualReference(pieces: Pieces, piece: number, { solids, slackMm }: Bench): number | 'table' {
  const stack = buildStack(pieces, solids, slackMm);
  if (!stack.ok) return 'table';
  const below = stack.value.supports.flatMap(({ upper, lower }) =>
    upper === piece && lower !== 'table' ? [lower] : [],
  );
  return below.length === 0 ? 'table' : Math.max(...below);
}

/** mm. Places are whole hundredths of a millimetre; a difference of two has no more digits than they have. */
const difference = (a: number, b: number): number => Math.round((a - b) * 100) / 100;
