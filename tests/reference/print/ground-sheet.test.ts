// The ground sheet as poppler prints it: every cell of every marker where a camera will look for it, and the ticks.

import { MARKER_CELLS, MARKER_SIDE_MM, markersOf } from '@cairnmark/photo';
import { groundPages, writePdf } from '@cairnmark/print';
import { printWords } from '@cairnmark/words';
import { describe, expect, it } from 'vitest';
import { hasPoppler } from '../../tools/poppler.mjs';
import { expectNear } from '../../tools/within.ts';
import { printOf, textIn, wordsIn } from './poppler.ts';

const PAGE_MM = { a4: [297, 210], letter: [279.4, 215.9] } as const;

/** mm. A dot of the printer. */
const DOT_MM = 25.4 / 600;

describe.skipIf(!hasPoppler())('the printed ground sheet', () => {
  it.each([
    ['one-page', 'letter', 'en', 0],
    ['four-pages', 'a4', 'es', 3],
  ] as const)('of %s on %s in %s has its markers and its ticks (page %i)', (sheet, size, language, page) => {
    const pages = groundPages(sheet, size, printWords(language));
    const pdf = pages.ok ? writePdf(pages.value, 'Ground sheet', language) : pages;
    if (!pages.ok || !pdf.ok) throw new Error(JSON.stringify(pages));
    expect(pages.value).toHaveLength(sheet === 'one-page' ? 1 : 4);
    // The two sheets are told apart in a heap of paper, and that for forts says how it is put together.
    const told = textIn(pdf.value);
    expect([told.includes('photos of towers'), told.includes('Une con cinta')]).toEqual([page === 0, page === 3]);
    const print = printOf(pdf.value, page);
    const [midX, midY] = PAGE_MM[size].map((mm) => mm / 2) as [number, number];
    const at = (x: number, y: number): [number, number] => [midX + x, midY + y];

    const cellMm = MARKER_SIDE_MM / MARKER_CELLS;
    for (const { id, centreMm, code } of markersOf(page)) {
      const read = Array.from({ length: 36 }, (_, k) => {
        const [row, column] = [Math.floor(k / 6), k % 6];
        return print.darkness(...at(centreMm[0] + (column - 2.5) * cellMm, centreMm[1] + (2.5 - row) * cellMm)) < 0.5;
      });
      const inside = read.filter((_, k) => k % 6 > 0 && k % 6 < 5 && k > 6 && k < 29);
      expect(inside.map(Number).join(''), `code of ${id}`).toBe(code);
      expect(read.filter(Boolean)).toHaveLength(inside.filter(Boolean).length);
      // From white into black half of the way is inked.
      const edge = print.middleOf(at(centreMm[0] - 18, centreMm[1] + 14), at(centreMm[0] - 14, centreMm[1] + 14));
      expectNear(edge, 3, { absolute: DOT_MM }, `left edge of ${id}`);
      const top = print.middleOf(at(centreMm[0] - 14, centreMm[1] + 18), at(centreMm[0] - 14, centreMm[1] + 14));
      expectNear(top, 3, { absolute: DOT_MM }, `upper edge of ${id}`);
    }

    const tickAt = (x: number, y: number): number => x - 1 + print.middleOf(at(x - 1, y), at(x + 1, y));
    expectNear(tickAt(50, -78) - tickAt(-50, -78), 100, { absolute: 0.05 }, 'mm between ticks');
    expectNear(tickAt(-32.6, 78) - tickAt(-83.4, 78), 50.8, { absolute: 0.05 }, 'inches between ticks');
    // No writing within a cell of a marker: white round it is what a marker is found by.
    for (const word of wordsIn(pdf.value)) {
      const [left, right] = [word.leftMm - midX, word.rightMm - midX];
      for (const x of [-116, 0, 116]) expect(right < x - 16 - cellMm || left > x + 16 + cellMm).toBe(true);
    }
  });
});
