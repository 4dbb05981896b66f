// Lines as poppler draws them at 600 dots an inch: where they should be, and as long.

import type { Mark, Page } from '@cairnmark/print';
import { framed, layOut, segment, solidLine, usableArea, writePdf } from '@cairnmark/print';
import { printWords } from '@cairnmark/words';
import { describe, expect, it } from 'vitest';
import { hasPoppler } from '../../tools/poppler.mjs';
import { freshSeed } from '../../tools/share.ts';
import { expectNear } from '../../tools/within.ts';
import { diceOf, times } from '../dice.ts';
import { barsOn } from './bars.ts';
import { printOf } from './poppler.ts';

const PAPERS = [
  { size: 'a4', orientation: 'portrait' },
  { size: 'letter', orientation: 'landscape' },
] as const;

/** mm. What a line may be beside its place: a third of its width, and well below what scissors do. */
const LINE_MM = 0.1;

function pdfOf(page: Page): Uint8Array {
  const pdf = writePdf([page], 'Lines', 'en');
  if (!pdf.ok) throw new Error(JSON.stringify(pdf.issues));
  return pdf.value;
}

describe.skipIf(!hasPoppler())('printed lines', () => {
  const seed = freshSeed('printed lines');

  it(`stand where they should, within 0.1 mm (seed ${seed})`, () => {
    const { between } = diceOf(seed);
    const paper = PAPERS[seed % 2]!;
    const { cornerMm, widthMm, heightMm } = usableArea(paper);
    // One line in each square of 40 mm, about its middle.
    const lines = times(20, (k) => {
      const middle = [cornerMm[0] + 20 + 40 * (k % 4), cornerMm[1] + 20 + 40 * Math.floor(k / 4)] as const;
      const [turn, half] = [between(0, Math.PI), between(5, 17)];
      const along = [Math.cos(turn), Math.sin(turn)] as const;
      const at = (mm: number, besideMm: number): [number, number] => [
        middle[0] + along[0] * mm - along[1] * besideMm,
        middle[1] + along[1] * mm + along[0] * besideMm,
      ];
      return { at, half };
    }).filter(({ at }) => at(0, 0)[0] < cornerMm[0] + widthMm - 20 && at(0, 0)[1] < cornerMm[1] + heightMm - 20);
    const marks = lines.map(({ at, half }) => solidLine(segment(at(-half, 0), at(half, 0)), 0.35));
    const print = printOf(pdfOf({ paper, marks }), 0);
    expect(lines.length).toBeGreaterThan(10);
    for (const { at, half } of lines) {
      for (const share of [-0.9, -0.3, 0.5, 0.9]) {
        expectNear(print.middleOf(at(share * half, -1), at(share * half, 1)) - 1, 0, { absolute: LINE_MM }, 'beside');
      }
      const [begin, end] = [
        print.middleOf(at(-half - 1, 0), at(-half + 1, 0)),
        print.middleOf(at(half - 1, 0), at(half + 1, 0)),
      ];
      // Half of each way is inked: its middle is at three quarters and at one quarter.
      expectNear(begin, 1.5, { absolute: LINE_MM }, 'beginning');
      expectNear(end, 0.5, { absolute: LINE_MM }, 'end');
    }
  });

  it('a curve is as round as it should be, and dashes are as long', () => {
    // A quarter of a circle of 37 mm by the usual cubic, which strays from it by 2.7e-4 of the radius (Goldapp 1991).
    const [radius, k] = [37, 0.5522847498];
    const curve = {
      kind: 'curve',
      c1: [60 + radius, 90 + k * radius],
      c2: [60 + k * radius, 90 + radius],
      to: [60, 90 + radius],
    } as const;
    const arc: Mark = solidLine({ start: [60 + radius, 90], steps: [curve], closed: false }, 0.25);
    const dashed: Mark = { ...solidLine(segment([20, 50], [180, 50]), 0.25), dashMm: [2, 1.5] };
    const print = printOf(pdfOf({ paper: PAPERS[0], marks: [arc, dashed] }), 0);
    for (const degrees of [3, 17, 29, 45, 61, 83]) {
      const [x, y] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
      const at = (mm: number): [number, number] => [60 + x * mm, 90 + y * mm];
      expectNear(print.middleOf(at(35), at(39)), 2, { absolute: LINE_MM }, `${degrees} degrees`);
    }
    for (const n of [0, 7, 31, 45]) {
      const left = 20 + 3.5 * n;
      expectNear(print.middleOf([left - 0.7, 50], [left + 2.7, 50]), 1.7, { absolute: LINE_MM }, `dash ${n}`);
      expect(print.darkness(left + 2.7, 50)).toBeLessThan(0.1);
    }
  });

  it.each(PAPERS)('the bars of the foot measure 100 mm and 2 in on %o', (paper) => {
    const sheet = layOut('Check', [], { paper, print: 'usual', mostPages: 1 });
    const pages = sheet.ok ? framed(sheet.value, printWords('en')) : sheet;
    if (!pages.ok) throw new Error(JSON.stringify(pages.issues));
    const print = printOf(pdfOf(pages.value[0]!), 0);
    const [mm, inches] = barsOn(print, pages.value[0]!);
    expectNear(mm, 100, { absolute: 0.05 }, 'mm');
    expectNear(inches, 50.8, { absolute: 0.05 }, 'inches');
  });
});
