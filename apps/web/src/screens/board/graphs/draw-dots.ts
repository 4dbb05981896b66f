// The line plot: dots stacked over a ruler, and the names on poles above them where there is room.

import { dot, link, plot, ruleX, text } from '@observablehq/plot';
import { dotRows, flagLevels } from './dot-rows.ts';
import { rulerEnds, rulerMarks, rulerPx } from './draw-ruler.ts';
import type { PlotScale, ScaleOf } from './plot-scale.ts';
import { plotScale } from './plot-scale.ts';
import type { Sheet } from './sheet.ts';
import { fitting, plain } from './sheet.ts';

export interface DotsDrawing {
  /** From left to right; `labels`: the names and the value of the stack, and the same in fewer words. */
  readonly stacks: readonly { readonly at: number; readonly count: number; readonly labels: readonly string[] }[];
  readonly scaleOf: ScaleOf;
  readonly unit: string;
  readonly number: (value: number) => string;
  readonly withNames: boolean;
}

export function drawDots(of: DotsDrawing, sheet: Sheet): Element {
  const { scale, left, right } = fitted(of, sheet);
  const px = (at: number): number => left + ((at - scale.from) / (scale.to - scale.from)) * (right - left);
  const radius = Math.round(sheet.fontPx * 0.5);
  const [rowPx, linePx] = [2 * radius + 2, Math.round(sheet.fontPx * 1.3)];
  const single = of.stacks.flatMap((stack) => Array.from({ length: stack.count }, () => stack));
  const rows = dotRows(
    single.map(({ at }) => px(at)),
    rowPx,
  );
  const dots = single.map((stack, k) => ({ stack, at: stack.at, y: yOfRow(rows[k] ?? 0) }));
  const levels = of.withNames ? flagLevels(flagsOf(of, sheet, px), GAP_PX) : [];
  const flagsPx = levels.length === 0 ? 0 : (Math.max(...levels) + 1) * linePx;
  const aboveRows = Math.max(yOfRow(Math.max(0, ...rows)) + 1.4 * rowPx, LEAST_PX - flagsPx);
  const flags = (of.withNames ? of.stacks : []).map((stack, k) => ({
    at: stack.at,
    label: fitting(stack.labels, sheet),
    from: Math.max(...dots.filter((one) => one.stack === stack).map(({ y }) => y)) + radius,
    y: aboveRows + (levels[k] ?? 0) * linePx + linePx / 2,
  }));
  const heightPx = Math.max(aboveRows, ...flags.map(({ y }) => y + linePx / 2)) + 4;
  return plot({
    ...plain(sheet, heightPx),
    x: { axis: null, domain: [scale.from, scale.to], range: [left, right] },
    y: { axis: null, domain: [0, heightPx], range: [heightPx, 0] },
    marks: [
      ruleX(scale.numbers, { x: (at: number) => at, y1: rulerPx(sheet), y2: heightPx, stroke: 'var(--square-5)' }),
      ...rulerMarks(scale, of.unit, of.number, sheet),
      link(flags, { x1: 'at', x2: 'at', y1: 'from', y2: ({ y }) => y + linePx * 0.35, stroke: 'var(--edge)' }),
      dot(dots, { x: 'at', y: 'y', r: radius, fill: 'var(--ink)' }),
      text(flags, {
        x: 'at',
        y: 'y',
        text: 'label',
        dx: 5,
        textAnchor: 'start',
        fill: 'var(--ink)',
        fontWeight: 600,
        ...HALO,
      }),
    ],
  });

  function yOfRow(row: number): number {
    return rulerPx(sheet) + 5 + radius + row * rowPx;
  }
}

/** px. A drawing lower than this looks like a rule on the page. */
const LEAST_PX = 170;

/** px. Between a name and the next pole. */
const GAP_PX = 12;

/** Letters stay clear of the lines behind them. */
export const HALO = { stroke: 'var(--paper)', strokeWidth: 4, paintOrder: 'stroke' } as const;

const flagsOf = (of: DotsDrawing, sheet: Sheet, px: (at: number) => number) =>
  of.stacks.map(({ at, labels }) => ({ x: px(at), widthPx: sheet.textWidth(fitting(labels, sheet)) + 5 }));

/** The scale with room at its right for the names that reach past it. */
function fitted(of: DotsDrawing, sheet: Sheet): { scale: PlotScale; left: number; right: number } {
  const values = of.stacks.map(({ at }) => at);
  let beyond = 0;
  for (;;) {
    const scale = plotScale(values, of.scaleOf, sheet.widthPx - beyond - EDGES_PX);
    const ends = rulerEnds(scale, of.unit, of.number, sheet);
    const [left, right] = [ends.left, sheet.widthPx - Math.max(beyond, ends.right)];
    const px = (at: number): number => left + ((at - scale.from) / (scale.to - scale.from)) * (right - left);
    const reach = of.withNames ? Math.max(0, ...flagsOf(of, sheet, px).map(({ x, widthPx }) => x + widthPx)) : 0;
    if (reach <= sheet.widthPx || beyond > sheet.widthPx / 2) return { scale, left, right };
    beyond += Math.max(8, reach - sheet.widthPx);
  }
}

/** px. About what the numbers at both ends reach past the scale. */
const EDGES_PX = 70;
