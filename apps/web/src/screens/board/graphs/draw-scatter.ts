// Height against base: a dot a build, and the best that could be as a line with steps.

import type { Markish } from '@observablehq/plot';
import { dot, line, plot, ruleX, ruleY, text } from '@observablehq/plot';
import { HALO } from './draw-dots.ts';
import { labelPlaces } from './label-places.ts';
import type { PlotScale, ScaleOf } from './plot-scale.ts';
import { decimalsOf, plotScale } from './plot-scale.ts';
import type { Sheet } from './sheet.ts';
import { fitting, plain } from './sheet.ts';

export interface ScatterDrawing {
  readonly dots: readonly { readonly base: number; readonly height: number; readonly name: string }[];
  /** The label of dots that lie on each other, and the same in fewer words. */
  readonly labels: (names: readonly string[]) => readonly string[];
  /** The best heights by their bases, the smallest first; null: not shown. */
  readonly front: readonly { readonly base: number; readonly height: number }[] | null;
  readonly baseTitle: string;
  readonly heightTitle: string;
  readonly baseScale: ScaleOf;
  readonly heightScale: ScaleOf;
  readonly number: (value: number, least: number) => string;
}

export function drawScatter(of: ScatterDrawing, sheet: Sheet): Element {
  const linePx = sheet.fontPx * 1.3;
  const heightPx = Math.round(Math.min(420, Math.max(300, sheet.widthPx * 0.48)));
  const all = [...of.dots, ...(of.front ?? [])];
  const drawn = { top: linePx * 1.3, bottom: heightPx - linePx * 2.6 };
  const y = plotScale(roomy(all.map(({ height }) => height)), of.heightScale, (drawn.bottom - drawn.top) * 1.2);
  const heightText = textsOf(y, of);
  const left = Math.max(...y.numbers.map((at) => sheet.textWidth(heightText(at)))) + 10;
  const right = sheet.widthPx - sheet.fontPx;
  const x = plotScale([0, ...roomy([0, ...all.map(({ base }) => base)]).slice(1)], of.baseScale, right - left);
  const baseText = textsOf(x, of);
  const xPx = (at: number): number => left + ((at - x.from) / (x.to - x.from)) * (right - left);
  const yPx = (at: number): number => drawn.bottom - ((at - y.from) / (y.to - y.from)) * (drawn.bottom - drawn.top);
  const spots = spotsOf(of, ({ base, height }) => [Math.round(xPx(base)), Math.round(yPx(height))], sheet);
  const sides = labelPlaces(
    spots.map(({ base, height, label }) => ({
      x: xPx(base),
      y: yPx(height),
      widthPx: sheet.textWidth(label) + APART_PX,
    })),
    sheet.fontPx * 1.15,
    { widthPx: sheet.widthPx, heightPx: drawn.bottom },
  );
  const names = spots.flatMap((spot, k) => {
    const side = sides[k] ?? null;
    return side === null ? [] : [{ ...spot, side }];
  });
  return plot({
    ...plain(sheet, heightPx),
    x: { axis: null, domain: [x.from, x.to], range: [left, right] },
    y: { axis: null, domain: [y.from, y.to], range: [drawn.bottom, drawn.top] },
    marks: [
      ...gridMarks(x, y),
      text(x.numbers, { x: (at: number) => at, y: () => y.from, dy: linePx * 0.7, text: baseText }),
      text(y.numbers, { x: () => x.from, y: (at: number) => at, dx: -8, textAnchor: 'end', text: heightText }),
      text([of.heightTitle], { frameAnchor: 'top-left', text: (title: string) => title, dy: sheet.fontPx * 0.2 }),
      text([of.baseTitle], { frameAnchor: 'bottom-right', text: (title: string) => title, dy: -sheet.fontPx * 0.2 }),
      ...frontMarks(of.front, x),
      dot(of.dots, { x: 'base', y: 'height', r: 6.5, fill: 'var(--ink)', stroke: 'var(--paper)', strokeWidth: 1.5 }),
      ...names.map(({ side, ...name }) =>
        text([name], {
          x: 'base',
          y: 'height',
          text: 'label',
          ...INK,
          dx: side.dx,
          dy: side.dy,
          textAnchor: side.anchor,
        }),
      ),
    ],
  });
}

/** The numbers of one axis, with as many decimals as one of them needs. */
const textsOf =
  ({ numbers }: PlotScale, { number }: ScatterDrawing) =>
  (at: number): string =>
    number(at, decimalsOf(numbers));

const INK = { fill: 'var(--ink)', fontWeight: 600, ...HALO } as const;

const gridMarks = (x: PlotScale, y: PlotScale): readonly Markish[] => [
  ruleX(x.numbers, { x: (at: number) => at, y1: y.from, y2: y.to, stroke: 'var(--square-5)' }),
  ruleY(y.numbers, { y: (at: number) => at, x1: x.from, x2: x.to, stroke: 'var(--square-5)' }),
  ruleX([x.from], { y1: y.from, y2: y.to, stroke: 'var(--ink)', strokeWidth: 1.6 }),
  ruleY([y.from], { x1: x.from, x2: x.to, stroke: 'var(--ink)', strokeWidth: 1.6 }),
];

/** From one base to the next the best height stays: on more ground no tower gets lower. */
function frontMarks(front: ScatterDrawing['front'], x: PlotScale): readonly Markish[] {
  const last = front?.at(-1);
  if (front === null || last === undefined) return [];
  const steps = [...front, { base: x.to, height: last.height }];
  return [
    line(steps, {
      x: 'base',
      y: 'height',
      curve: 'step-after',
      stroke: 'var(--ink)',
      strokeWidth: 2.2,
      strokeDasharray: '7 4',
    }),
    dot(front, {
      x: 'base',
      y: 'height',
      r: 5,
      symbol: 'diamond',
      fill: 'var(--wood)',
      stroke: 'var(--ink)',
      strokeWidth: 1.5,
    }),
  ];
}

/** With a little room at both ends, so that no dot lies on the edge. */
function roomy(values: readonly number[]): readonly number[] {
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const room = ROOM_SHARE * (most - least);
  return [least - room, most + room];
}

const ROOM_SHARE = 0.04;

/** px. Between two names on one line. */
const APART_PX = 10;

/** Dots that lie on each other are one spot, with one label. */
function spotsOf(of: ScatterDrawing, at: (dot: ScatterDrawing['dots'][number]) => readonly number[], sheet: Sheet) {
  const spots = new Map<string, ScatterDrawing['dots']>();
  for (const dot of of.dots) {
    const key = at(dot).join(' ');
    spots.set(key, [...(spots.get(key) ?? []), dot]);
  }
  return [...spots.values()].flatMap((dots) => {
    const [first] = dots;
    return first === undefined ? [] : [{ ...first, label: fitting(of.labels(dots.map(({ name }) => name)), sheet) }];
  });
}
