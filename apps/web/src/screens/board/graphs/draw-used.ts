// The bar graph of the pieces used: a box a piece, set end to end from 0, with the drawing and the name of the solid.

import { plot, rect, ruleX, text } from '@observablehq/plot';
import { PICTURE_PX } from '../../../drawing/kit-scale.ts';
import type { PlotScale } from './plot-scale.ts';
import { plotScale } from './plot-scale.ts';
import type { Sheet } from './sheet.ts';
import { plain } from './sheet.ts';

export interface Bar {
  readonly name: string;
  readonly pieces: number;
  /** The custom property with the colour of its family. */
  readonly token: string;
  /** Its drawing, `PICTURE_PX` square; null: it stands for several kinds. */
  readonly picture: (() => Element) | null;
}

export interface UsedDrawing {
  readonly bars: readonly Bar[];
  /** The scale goes in ones. */
  readonly inOnes: boolean;
  readonly number: (value: number) => string;
}

export function drawUsed({ bars, inOnes, number }: UsedDrawing, sheet: Sheet): Element {
  const linePx = sheet.fontPx * 1.3;
  const nameWidth = Math.max(0, ...bars.map(({ name }) => sheet.textWidth(name)));
  const isNarrow = nameWidth + PICTURE_PX > sheet.widthPx * 0.5;
  const nameAbove = isNarrow ? linePx : 0;
  const left = PICTURE_PX + 8 + (isNarrow ? 0 : nameWidth + 12);
  const most = Math.max(1, ...bars.map(({ pieces }) => pieces));
  const right = sheet.widthPx - sheet.textWidth(number(most)) - 14;
  const scale = inOnes ? scaleInOnes(most) : plotScale([0, most], COUNTS, right - left);
  const rowPx = PICTURE_PX + 4 + nameAbove;
  const drawnPx = bars.length * rowPx;
  const heightPx = drawnPx + linePx * 1.4;
  const at = (k: number): number => k * rowPx + nameAbove;
  const unitPx = (right - left) / (scale.to - scale.from);
  const pieces = bars.flatMap((bar, k) =>
    unitPx < NARROWEST_PX
      ? [{ ...bar, k, from: 0, to: bar.pieces }]
      : Array.from({ length: bar.pieces }, (_, piece) => ({ ...bar, k, from: piece, to: piece + 1 })),
  );
  const drawing = plot({
    ...plain(sheet, heightPx),
    x: { axis: null, domain: [scale.from, scale.to], range: [left, right] },
    y: { axis: null, domain: [0, heightPx], range: [0, heightPx] },
    marks: [
      ruleX(scale.numbers, { x: (value: number) => value, y1: 0, y2: drawnPx, stroke: 'var(--square-5)' }),
      rect(pieces, {
        x1: 'from',
        x2: 'to',
        y1: ({ k }) => at(k) + 8,
        y2: ({ k }) => at(k) + PICTURE_PX - 8,
        insetLeft: 1.2,
        insetRight: 1.2,
        fill: ({ token }) => `var(${token})`,
        stroke: 'var(--p-edge)',
        strokeWidth: 1.2,
      }),
      ruleX([0], { y1: 0, y2: drawnPx, stroke: 'var(--ink)', strokeWidth: 1.8 }),
      text(bars, {
        x: 'pieces',
        y: (_, k) => at(k) + PICTURE_PX / 2,
        text: ({ pieces: count }) => number(count),
        dx: 8,
        textAnchor: 'start',
        fill: 'var(--ink)',
        fontWeight: 600,
      }),
      text(bars, {
        x: () => 0,
        y: (_, k) => (isNarrow ? k * rowPx + linePx / 2 + 4 : at(k) + PICTURE_PX / 2),
        text: 'name',
        dx: isNarrow ? 0 : -(nameWidth + 12),
        textAnchor: 'start',
        fill: 'var(--ink)',
      }),
      text(inOnes ? told(scale.numbers, unitPx, number, sheet) : scale.numbers, {
        x: (value: number) => value,
        y: () => drawnPx + linePx * 0.75,
        text: number,
      }),
    ],
  });
  for (const [k, { picture }] of bars.entries()) {
    if (picture === null) continue;
    const place = document.createElementNS('http://www.w3.org/2000/svg', 'g');
    place.setAttribute('transform', `translate(0 ${at(k)})`);
    place.append(picture());
    drawing.append(place);
  }
  return drawing;
}

/** Of a scale in ones as many numbers as there is room for. */
function told(numbers: readonly number[], unitPx: number, number: UsedDrawing['number'], sheet: Sheet) {
  const widest = Math.max(...numbers.map((one) => sheet.textWidth(number(one)))) + 6;
  const step = [1, 2, 5, 10, 20, 50].find((times) => times * unitPx >= widest) ?? 100;
  return numbers.filter((one) => one % step === 0);
}

/** px. Boxes narrower than this run together: the bar is drawn in one. */
const NARROWEST_PX = 7;

const COUNTS = { inches: false, finest: 1, leastStep: 1 };

const scaleInOnes = (most: number): PlotScale => ({
  from: 0,
  to: most,
  numbers: Array.from({ length: most + 1 }, (_, k) => k),
  divisions: [],
});
