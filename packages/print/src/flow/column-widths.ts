// How a width is shared out among columns, mm.

import type { Column } from './blocks.ts';

export interface Span {
  readonly leftMm: number;
  readonly widthMm: number;
}

/**
 * From left to right, `gapMm` apart. Columns with a width get it, the others share the rest. Throws RangeError where
 * nothing is left for those.
 */
export function spansOf(columns: readonly Column[], widthMm: number, gapMm: number): readonly Span[] {
  const fixedMm = columns.reduce((sum, column) => sum + ('widthMm' in column ? column.widthMm : 0), 0);
  const shares = columns.reduce((sum, column) => sum + ('share' in column ? column.share : 0), 0);
  const restMm = widthMm - fixedMm - (columns.length - 1) * gapMm;
  if (shares > 0 ? restMm <= 0 : restMm < -ROUNDING_MM)
    throw new RangeError(`columns of ${fixedMm} mm in ${widthMm} mm`);
  let leftMm = 0;
  return columns.map((column) => {
    const span = { leftMm, widthMm: 'share' in column ? (restMm * column.share) / shares : column.widthMm };
    leftMm += span.widthMm + gapMm;
    return span;
  });
}

/** mm. Sums of widths are off by less. */
const ROUNDING_MM = 1e-6;
