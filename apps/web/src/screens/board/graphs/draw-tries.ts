// The first try and the best try of each group, joined by a line.

import type { Markish } from '@observablehq/plot';
import { dot, link, plot, ruleX, text } from '@observablehq/plot';
import { HALO } from './draw-dots.ts';
import { spread } from './label-places.ts';
import type { ScaleOf } from './plot-scale.ts';
import { plotScale } from './plot-scale.ts';
import type { Sheet } from './sheet.ts';
import { plain } from './sheet.ts';

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
  const placed = (labels: readonly Label[], roomPx: number): readonly Placed[] => {
    const own = labels.map(({ at }) => yPx(at));
    const ys = spread(own, linePx, top, bottom);
    return labels.map(({ texts }, k) => ({
      label: texts.find((text) => sheet.textWidth(text) <= roomPx) ?? texts.at(-1) ?? '',
      own: own[k] ?? 0,
      y: ys[k] ?? 0,
    }));
  };
  const firsts = placed(of.firstLabels, sheet.widthPx / 2);
  const left = widest(firsts, sheet) + besidePx(firsts);
  const bests = placed(of.bestLabels, Math.min(sheet.widthPx / 2, sheet.widthPx - left - LEAST_PX - POLE_PX));
  const right = Math.max(left + LEAST_PX, sheet.widthPx - widest(bests, sheet) - besidePx(bests));
  const again = of.groups.filter(({ tries }) => tries > 1);
  const heightPx = bottom + linePx * 1.8;
  return plot({
    ...plain(sheet, heightPx),
    x: { axis: null, domain: [0, sheet.widthPx], range: [0, sheet.widthPx] },
    y: { axis: null, domain: [0, heightPx], range: [0, heightPx] },
    marks: [
      ruleX([left, right], { x: (at: number) => at, y1: top, y2: bottom, stroke: 'var(--square-5)' }),
      link(again, {
        x1: left,
        x2: right,
        y1: ({ first }) => yPx(first),
        y2: ({ best }) => yPx(best),
        stroke: 'var(--ink)',
        strokeWidth: 2.2,
      }),
      ...labelMarks(firsts, left, -1),
      ...labelMarks(bests, right, 1),
      dot(again, {
        x: left,
        y: ({ first }) => yPx(first),
        r: DOT_PX,
        fill: 'var(--paper)',
        stroke: 'var(--ink)',
        strokeWidth: 2.2,
      }),
      dot(of.groups, { x: right, y: ({ best }) => yPx(best), r: DOT_PX, fill: 'var(--ink)' }),
      ...titleMarks(of, { left, right, yPx: heightPx - linePx * 0.7 }, sheet),
    ],
  });
}

interface Placed {
  readonly label: string;
  /** Where the dot is, and where the text found room: px from the top. */
  readonly own: number;
  readonly y: number;
}

const widest = (labels: readonly Placed[], { textWidth }: Sheet): number =>
  Math.max(0, ...labels.map(({ label }) => textWidth(label)));

const isMoved = ({ own, y }: Placed): boolean => Math.abs(own - y) > DOT_PX / 2;

/** Where texts had to move away from their dots there is room for poles between them. */
const besidePx = (labels: readonly Placed[]): number => (labels.some(isMoved) ? POLE_PX : BESIDE_PX);

/** Texts beside the dots at `x`, `way` 1 to the right; with a pole from each dot whose text is not level with it. */
function labelMarks(labels: readonly Placed[], x: number, way: 1 | -1): readonly Markish[] {
  return [
    link(labels.filter(isMoved), {
      x1: x + way * DOT_PX,
      x2: x + way * (besidePx(labels) - 3),
      y1: 'own',
      y2: 'y',
      stroke: 'var(--edge)',
    }),
    text(labels, {
      x,
      y: 'y',
      text: 'label',
      dx: way * besidePx(labels),
      textAnchor: way === 1 ? 'start' : 'end',
      fill: way === 1 ? 'var(--ink)' : 'var(--ink-2)',
      ...(way === 1 ? { fontWeight: 600 } : {}),
      ...HALO,
    }),
  ];
}

/** Under the dots, or at both ends where they would touch. */
function titleMarks(
  { firstTitle, bestTitle }: TriesDrawing,
  { left, right, yPx }: { readonly left: number; readonly right: number; readonly yPx: number },
  { widthPx, textWidth }: Sheet,
): readonly Markish[] {
  const [first, best] = [textWidth(firstTitle), textWidth(bestTitle)];
  const fits = right - left > (first + best) / 2 + BESIDE_PX && left >= first / 2 && widthPx - right >= best / 2;
  const title = (words: string, x: number, textAnchor: 'start' | 'middle' | 'end'): Markish =>
    text([words], { x, y: yPx, text: (one: string) => one, textAnchor });
  return fits
    ? [title(firstTitle, left, 'middle'), title(bestTitle, right, 'middle')]
    : [title(firstTitle, 0, 'start'), title(bestTitle, widthPx, 'end')];
}

/** px. */
const DOT_PX = 6;

/** px. The least that lines from one side to the other need. */
const LEAST_PX = 24;

/** px. Between a dot and its text, with a pole between them. */
const POLE_PX = 24;

/** px. Between a dot and its text. */
const BESIDE_PX = 14;
