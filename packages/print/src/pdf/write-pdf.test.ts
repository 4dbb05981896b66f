// That programs for PDF read it, and see what they should: tests/reference/print.

import { describe, expect, it } from 'vitest';
import type { Page, Writing } from '../page/page.ts';
import { rectangle, solidLine } from '../page/shapes.ts';
import { contentOf } from './content.ts';
import { writePdf } from './write-pdf.ts';

const writing = (text: string): Writing => ({
  kind: 'writing',
  text,
  at: [20, 30],
  align: 'right',
  font: 'bold',
  sizeMm: 5,
  turnRad: Math.PI / 2,
  grey: 0.25,
});
const page = (text: string): Page => ({
  paper: { size: 'letter', orientation: 'landscape' },
  marks: [writing(text), solidLine(rectangle([10, 20], 30, 50), 0.35)],
});
const fileOf = (...pages: readonly Page[]): string => {
  const pdf = writePdf(pages, 'Torre π', 'es');
  if (!pdf.ok) throw new Error(JSON.stringify(pdf.issues));
  return String.fromCharCode(...pdf.value);
};

describe('a PDF', () => {
  const file = fileOf(page('Año'), page('(1) \\ 2'));

  it('is the same to the last byte when it is written again', () => {
    expect(fileOf(page('Año'), page('(1) \\ 2'))).toBe(file);
    expect(file).not.toMatch(/Date|\/ID/);
  });

  it('has its table of objects where it says, and every object where the table says', () => {
    const table = Number(/startxref\n(\d+)\n%%EOF\n$/.exec(file)?.[1]);
    const [, count = '', entries = ''] = /^xref\n0 (\d+)\n((?:.{19}\n)+)trailer\n/.exec(file.slice(table)) ?? [];
    const begins = entries.match(/.{19}\n/g) ?? [];
    expect(begins).toHaveLength(Number(count));
    expect(begins[0]).toBe('0000000000 65535 f \n');
    for (const [number, entry] of begins.entries()) {
      if (number > 0) expect(file.slice(Number(entry.slice(0, 10))).startsWith(`${number} 0 obj\n`)).toBe(true);
    }
    const streams = [...file.matchAll(/\/Length (\d+) >>\nstream\n([\s\S]*?)\nendstream/g)];
    expect(streams.map(([, length]) => Number(length))).toEqual(streams.map(([, , content = '']) => content.length));
    expect(streams).toHaveLength(2);
  });

  it('asks for no scaling, and tells its language, its title in any letters and the size of the paper', () => {
    expect(file).toContain('/PrintScaling /None');
    expect(file).toContain('/Lang (es)');
    expect(file).toContain('/Title <feff0054006f007200720065002003c0>');
    // 11 in by 8.5 in are 792 by 612 points.
    expect(file).toContain('/MediaBox [0 0 792 612]');
  });

  it('is in ASCII alone, whatever is written in it', () => {
    expect(file).toMatch(/^[\n\x20-\x7e]*$/);
    expect(file).toContain('(A\\361o)');
    expect(file).toContain('(\\(1\\) \\\\ 2)');
  });

  it('is refused with every character that cannot be printed, and where it stands', () => {
    expect(writePdf([page('Año'), page('π is → π')], 'Torre', 'en')).toEqual({
      ok: false,
      issues: [...'π→'].map((character) => ({
        code: 'character-unprintable',
        path: ['pages', 1, 'marks', 0],
        details: { character, text: 'π is → π' },
      })),
    });
  });
});

it('turned writing ends where it should: to the right of the text is up', () => {
  // Helvetica-Bold.afm: L 611, i 278. 0.889 of 5 mm back from (20, 30), which is down.
  expect(contentOf([writing('Li')])).toContain('BT 0.25 g /F2 5 Tf 0 1 -1 0 20 25.555 Tm (Li) Tj ET');
});

it('a mark that stands nowhere is a mistake of the program', () => {
  expect(() => contentOf([solidLine(rectangle([0, Number.NaN], 3, 5), 0.35)])).toThrow(RangeError);
});
