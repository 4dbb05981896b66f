// The ruler of the app as the axis of a graph: a wooden band with divisions that come down from its upper edge. The y scale of
// the drawing counts px upwards from the lower edge of the band.

import type { Markish } from '@observablehq/plot';
import { rect, ruleX, text } from '@observablehq/plot';
import type { Division, PlotScale } from './plot-scale.ts';
import type { Sheet } from './sheet.ts';

/** px. Of the wooden band. */
export const rulerPx = ({ fontPx }: Sheet): number => Math.round(18 + fontPx * 1.15);

/** px. Room beside the first and the last number, the unit behind the last one. */
export const rulerEnds = (scale: PlotScale, unit: string, number: (value: number) => string, sheet: Sheet) => {
  const half = (value: number): number => sheet.textWidth(number(value)) / 2;
  return { left: half(scale.from) + 8, right: half(scale.to) + 8 + (unit === '' ? 0 : sheet.textWidth(` ${unit}`)) };
};

export function rulerMarks(
  scale: PlotScale,
  unit: string,
  number: (value: number) => string,
  sheet: Sheet,
): readonly Markish[] {
  const height = rulerPx(sheet);
  const ends = rulerEnds(scale, unit, number, sheet);
  const line = height - sheet.fontPx * 1.15;
  const ink = { fill: 'var(--wood-ink)', y: sheet.fontPx * 0.62 };
  return [
    rect([scale], {
      x1: 'from',
      x2: 'to',
      y1: 0,
      y2: height,
      // From edge to edge, whatever stands beside the scale above it.
      insetLeft: -sheet.widthPx,
      insetRight: -sheet.widthPx,
      clip: 'frame',
      fill: 'var(--wood)',
    }),
    ruleX(scale.divisions, {
      x: 'at',
      y1: height,
      y2: ({ size }: Division) => height - line * size,
      stroke: 'var(--wood-ink)',
      strokeWidth: 1.3,
    }),
    text(scale.numbers, { ...ink, x: (at: number) => at, text: number }),
    text([scale.to], {
      ...ink,
      x: (at: number) => at,
      dx: ends.right - 6,
      textAnchor: 'end',
      text: () => unit,
    }),
  ];
}
