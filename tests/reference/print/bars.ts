// The two bars of a page, measured on its print.

import type { Page } from '@cairnmark/print';
import { extentOf, FOOT_MM, MARGIN_MM } from '@cairnmark/print';
import { expect } from 'vitest';
import type { Print } from './poppler.ts';

/** How long they are: that of 100 mm, then that of 2 in. */
export function barsOn(print: Print, page: Page): readonly [mm: number, inches: number] {
  const ends = endsOn(page);
  expect(ends).toHaveLength(4);
  const [a, b, c, d] = ends.map(({ x, y }) => x - 1 + print.middleOf([x - 1, y], [x + 1, y])) as number[];
  return [b! - a!, d! - c!];
}

/** Just below the upper end of every upright line of the foot, from left to right. */
function endsOn({ marks, paper }: Page): readonly { x: number; y: number }[] {
  const footMm = MARGIN_MM + FOOT_MM;
  const { widthMm } = extentOf(paper);
  return marks
    .flatMap((mark) => {
      const [step] = mark.kind === 'stroke' ? mark.path.steps : [];
      if (mark.kind !== 'stroke' || step === undefined || step.to[0] !== mark.path.start[0]) return [];
      if (step.to[1] > footMm || mark.path.start[1] > footMm || step.to[0] > widthMm) return [];
      return [{ x: step.to[0], y: step.to[1] - 0.3 }];
    })
    .sort((a, b) => a.x - b.x);
}
