// Writing as poppler reads it back: the same characters, as wide as we reckon with.

import type { Font, Writing } from '@cairnmark/print';
import { framed, layOut, textWidthMm, writePdf } from '@cairnmark/print';
import { printWords } from '@cairnmark/words';
import { describe, expect, it } from 'vitest';
import { hasPoppler } from '../../tools/poppler.mjs';
import { expectNear } from '../../tools/within.ts';
import { textIn, wordsIn } from './poppler.ts';

const PAPER = { size: 'a4', orientation: 'portrait' } as const;
const LOOK = { kind: 'writing', align: 'left', sizeMm: 5, turnRad: 0, grey: 0 } as const;

/**
 * Every character that a sheet can hold and that is seen: ASCII, the second half of Latin-1, and what the code page 1252 has
 * besides (Unicode's table CP1252.TXT). Poppler tells them by a table of its own.
 */
const range = (first: number, last: number): string[] =>
  Array.from({ length: last - first + 1 }, (_, k) => String.fromCodePoint(first + k));
const SEEN = [...range(0x21, 0x7e), ...range(0xa1, 0xac), ...range(0xae, 0xff), ...'€‚ƒ„…†‡ˆ‰Š‹ŒŽ‘’“”•–—˜™š›œžŸ'];

function pdfOf(marks: readonly Writing[]): Uint8Array {
  const pdf = writePdf([{ paper: PAPER, marks }], 'Writing', 'es');
  if (!pdf.ok) throw new Error(JSON.stringify(pdf.issues));
  return pdf.value;
}

describe.skipIf(!hasPoppler())('printed writing', () => {
  it.each<Font>(['regular', 'bold'])('has the widths that poppler has for its font, %s', (font) => {
    const line = (text: string, k: number): Writing => ({
      ...LOOK,
      font,
      text,
      at: [10 + 18 * (k % 10), 280 - 11 * Math.floor(k / 10)],
    });
    const words = wordsIn(pdfOf(SEEN.map(line)));
    expect(SEEN.length).toBe(215);
    expect(words.map(({ text }) => text)).toEqual(SEEN);
    for (const { text, leftMm, rightMm } of words) {
      // A thousandth of the font size is 0.005 mm; poppler prints to a millionth of a point.
      expectNear(rightMm - leftMm, textWidthMm(text, { font, sizeMm: 5 }), { absolute: 1e-4 }, text);
    }
  });

  it('spaces are as wide too, and writing begins, stands in the middle and ends where it should', () => {
    const marks = (['left', 'middle', 'right'] as const).map(
      (align, k): Writing => ({ ...LOOK, font: 'regular', text: 'Torre de cartón', align, at: [100, 250 - 20 * k] }),
    );
    const words = wordsIn(pdfOf(marks));
    const lengthMm = textWidthMm('Torre de cartón', { font: 'regular', sizeMm: 5 });
    const begins = words.filter(({ text }) => text === 'Torre').map(({ leftMm }) => leftMm);
    const ends = words.filter(({ text }) => text === 'cartón').map(({ rightMm }) => rightMm);
    for (const [k, before] of [0, lengthMm / 2, lengthMm].entries()) {
      expectNear(begins[k]!, 100 - before, { absolute: 1e-3 });
      expectNear(ends[k]!, 100 - before + lengthMm, { absolute: 1e-3 });
    }
  });

  it('a sheet says in Spanish what it should, on the page that it should', () => {
    const text = '¿Qué sólido es más alto? ¡El cono! Año, pingüino, «ñandú», (5 cm²), 1/2 \\ 3.';
    const blocks = [
      { kind: 'paragraph', text },
      { kind: 'new-page' },
      { kind: 'list', mark: 'number', items: ['Mide.', 'Dobla.'] },
    ] as const;
    const sheet = layOut('Ficha de los Frailecillos', blocks, { paper: PAPER, print: 'usual', mostPages: 2 });
    const pages = sheet.ok ? framed(sheet.value, printWords('es')) : sheet;
    const pdf = pages.ok ? writePdf(pages.value, 'Ficha', 'es') : pages;
    if (!pdf.ok) throw new Error(JSON.stringify(pdf.issues));
    expect(textIn(pdf.value)).toContain(text);
    expect(textIn(pdf.value)).toContain('Ficha de los Frailecillos');
    const [first, second] = [0, 1].map((page) => wordsIn(pdf.value).filter((word) => word.page === page));
    expect(first!.map((word) => word.text).join(' ')).toContain('Página 1 de 2');
    expect(second!.map((word) => word.text).join(' ')).toMatch(/^1\. Mide\. 2\. Dobla\. .*Página 2 de 2/);
  });
});
