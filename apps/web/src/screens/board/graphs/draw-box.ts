// The box plot over a ruler: the box from quartile to quartile, the median in it, and lines to the least and the greatest value.

import { dot, link, plot, rect, ruleX } from '@observablehq/plot';
import { dotRows } from './dot-rows.ts';
import { rulerEnds, rulerMarks, rulerPx } from './draw-ruler.ts';
import type { ScaleOf } from './plot-scale.ts';
import { plotScale } from './plot-scale.ts';
import type { FiveNumbers } from './quartiles.ts';
import type { Sheet } from './sheet.ts';
import { plain } from './sheet.ts';

export interface BoxDrawing {
  readonly five: FiveNumbers;
  /** The smallest first. */
  readonly values: readonly number[];
  readonly scaleOf: ScaleOf;
  readonly unit: string;
  readonly number: (value: number) => string;
}

export function drawBox({ five, values, scaleOf, unit, number }: BoxDrawing, sheet: Sheet): Element {
  const scale = plotScale(values, scaleOf, sheet.widthPx - 2 * ENDS_PX);
  const ends = rulerEnds(scale, unit, number, sheet);
  const [left, right] = [ends.left, sheet.widthPx - ends.right];
  const px = (at: number): number => left + ((at - scale.from) / (scale.to - scale.from)) * (right - left);
  const rows = dotRows(values.map(px), 2 * RADIUS_PX + 2);
  const dotY = (row: number): number => rulerPx(sheet) + 5 + RADIUS_PX + row * (2 * RADIUS_PX + 2);
  const low = dotY(Math.max(...rows)) + 20;
  const [middle, high] = [low + BOX_PX / 2, low + BOX_PX];
  const heightPx = high + 10;
  const ink = { stroke: 'var(--ink)', strokeWidth: 2 };
  return plot({
    ...plain(sheet, heightPx),
    x: { axis: null, domain: [scale.from, scale.to], range: [left, right] },
    y: { axis: null, domain: [0, heightPx], range: [heightPx, 0] },
    marks: [
      ruleX(scale.numbers, { x: (at: number) => at, y1: rulerPx(sheet), y2: heightPx, stroke: 'var(--square-5)' }),
      ...rulerMarks(scale, unit, number, sheet),
      dot(values, {
        x: (at: number) => at,
        y: (_: number, k: number) => dotY(rows[k] ?? 0),
        r: RADIUS_PX,
        fill: 'var(--ink-2)',
      }),
      link(
        [
          [five.least, five.lower],
          [five.upper, five.most],
        ],
        { x1: ([a]) => a, x2: ([, b]) => b, y1: middle, y2: middle, ...ink },
      ),
      ruleX([five.least, five.most], { x: (at: number) => at, y1: low + 10, y2: high - 10, ...ink }),
      rect([five], { x1: 'lower', x2: 'upper', y1: low, y2: high, fill: 'var(--wood)', ...ink }),
      ruleX([five.median], { x: (at: number) => at, y1: low, y2: high, stroke: 'var(--wood-ink)', strokeWidth: 4 }),
    ],
  });
}

/** px. */
const BOX_PX = 44;
const RADIUS_PX = 5;
const ENDS_PX = 40;
