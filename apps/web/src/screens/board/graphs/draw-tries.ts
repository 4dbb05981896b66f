// The first try and the best try of each group, joined by a line.

import { dot, link, plot, ruleY, text } from '@observablehq/plot';
import { HALO } from './draw-dots.ts';
import { spread } from './label-places.ts';
import type { ScaleOf } from './plot-scale.ts';
import { plotScale } from './plot-scale.ts';
import type { Sheet } from './sheet.ts';
import { fitting, plain } from './sheet.ts';

export interface TriesDrawing {
  readonly groups: readonly { readonly first: number; readonly best: number; readonly tries: number }[];
  /** Beside the first values of groups that tried again, and beside the best ones: one text for each value. */
  readonly firstLabels: readonly Label[];
  readonly bestLabels: readonly Label[];
  readonly scaleOf: ScaleOf;
  readonly firstTitle: string;
  readonly bestTitle: string;
}

interface Label {
  readonly at: number;
  /** The same in fewer and fewer words. */
  readonly texts: readonly string[];
}

export function drawTries(of: TriesDrawing, sheet: Sheet): Element {
  const linePx = sheet.fontPx * 1.25;
  const drawnPx = Math.max(200, of.groups.length * linePx * 1.1);
  const [top, bottom] = [linePx, linePx + drawnPx];
  // The same divisions on a scale that stands upright.
  const scale = plotScale(
    of.groups.flatMap(({ first, best }) => [first, best]),
    of.scaleOf,
    drawnPx,
  );
  const yPx = (value: number): number => bottom - ((value - scale.from) / (scale.to - scale.from)) * drawnPx;
  const width = (labels: readonly Label[]): number =>
    Math.max(0, ...labels.map(({ texts }) => sheet.textWidth(fitting(texts, sheet))));
  const left = width(of.firstLabels) + BESIDE_PX;
  const right = sheet.widthPx - width(of.bestLabels) - BESIDE_PX;
  const again = of.groups.filter(({ tries }) => tries > 1);
  const placed = (labels: readonly Label[]) => {
    const own = labels.map(({ at }) => yPx(at));
    const ys = spread(own, linePx, top, bottom);
    return labels.map(({ texts }, k) => ({ label: fitting(texts, sheet), own: own[k] ?? 0, y: ys[k] ?? 0 }));
  };
  const [firsts, bests] = [placed(of.firstLabels), placed(of.bestLabels)];
  const heightPx = bottom + linePx * 1.8;
  return plot({
    ...plain(sheet, heightPx),
    x: { axis: null, domain: [0, 1], range: [left, Math.max(left + 40, right)] },
    y: { axis: null, domain: [0, heightPx], range: [0, heightPx] },
    marks: [
      ruleY(scale.numbers, { x1: 0, x2: 1, y: yPx, stroke: 'var(--square-5)' }),
      link(again, {
        x1: 0,
        x2: 1,
        y1: ({ first }) => yPx(first),
        y2: ({ best }) => yPx(best),
        stroke: 'var(--ink)',
        strokeWidth: 2.2,
      }),
      dot(again, {
        x: 0,
        y: ({ first }) => yPx(first),
        r: 6,
        fill: 'var(--paper)',
        stroke: 'var(--ink)',
        strokeWidth: 2.2,
      }),
      dot(of.groups, { x: 1, y: ({ best }) => yPx(best), r: 6, fill: 'var(--ink)' }),
      text(firsts, { x: 0, y: 'y', text: 'label', dx: -BESIDE_PX, textAnchor: 'end', fill: 'var(--ink-2)', ...HALO }),
      text(bests, {
        x: 1,
        y: 'y',
        text: 'label',
        dx: BESIDE_PX,
        textAnchor: 'start',
        fill: 'var(--ink)',
        fontWeight: 600,
        ...HALO,
      }),
      text([of.firstTitle], { frameAnchor: 'bottom-left', text: (title: string) => title, dy: -linePx * 0.2 }),
      text([of.bestTitle], { frameAnchor: 'bottom-right', text: (title: string) => title, dy: -linePx * 0.2 }),
    ],
  });
}

/** px. Between a dot and its text. */
const BESIDE_PX = 14;
