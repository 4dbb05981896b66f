import { printWords } from '@cairnmark/words';
import { describe, expect, it } from 'vitest';
import { expectNear } from '../../../../tests/tools/within.ts';
import { boundsOf } from '../bounds-of.ts';
import { extentOf } from '../page/paper.ts';
import type { Sheet } from './frame.ts';
import { FOOT_MM, framed, MARGIN_MM, usableArea } from './frame.ts';

const sheet = (name: string, pages = 1): Sheet => ({
  name,
  paper: { size: 'a4', orientation: 'portrait' },
  pages: Array.from({ length: pages }, () => []),
});

it.each([
  ['a4', 'portrait', 194, 267],
  ['letter', 'portrait', 199.9, 249.4],
  ['a4', 'landscape', 281, 180],
] as const)('%s in %s has %f by %f mm to use', (size, orientation, widthMm, heightMm) => {
  const area = usableArea({ size, orientation });
  expectNear(area.widthMm, widthMm, { absolute: 1e-9 });
  expectNear(area.heightMm, heightMm, { absolute: 1e-9 });
  expect(area.cornerMm).toEqual([8, 22]);
});

describe('the foot', () => {
  it.each(['en', 'es'] as const)('stands between the margin and the content, in %s on every paper', (language) => {
    for (const size of ['a4', 'letter'] as const) {
      for (const orientation of ['portrait', 'landscape'] as const) {
        const paper = { size, orientation };
        const pages = framed({ ...sheet('Measuring table: Narrow Rock, grade band 6-8'), paper }, printWords(language));
        if (!pages.ok) throw new Error(JSON.stringify(pages.issues));
        for (const mark of pages.value[0]!.marks) {
          const { left, right, bottom, top } = boundsOf(mark);
          expect(left).toBeGreaterThanOrEqual(MARGIN_MM - 0.13);
          expect(right).toBeLessThanOrEqual(extentOf(paper).widthMm - MARGIN_MM + 1e-9);
          expect(bottom).toBeGreaterThanOrEqual(MARGIN_MM);
          expect(top).toBeLessThanOrEqual(MARGIN_MM + FOOT_MM);
        }
      }
    }
  });

  it('counts the pages of its sheet', () => {
    const pages = framed(sheet('Rules', 3), printWords('es'));
    const texts = pages.ok
      ? pages.value.map(({ marks }) => marks.flatMap((mark) => ('text' in mark ? mark.text : [])))
      : [];
    expect(texts.map((page) => page.find((text) => text.startsWith('Página')))).toEqual([
      'Página 1 de 3',
      'Página 2 de 3',
      'Página 3 de 3',
    ]);
  });

  it('refuses a name that is too long for it, or cannot be printed; the words say so', () => {
    const long = framed(sheet('Harbour Wall '.repeat(7).trim()), printWords('en'));
    expect(long.ok ? [] : long.issues.map((issue) => printWords('en').issue(issue))).toEqual([
      expect.stringMatching(
        /^"Harbour Wall .*" needs 1\d\d(\.\d)? mm and has only 1\d\d(\.\d)? mm\. Write it shorter\.$/,
      ),
    ]);
    const foreign = framed(sheet('Łódź'), printWords('es'));
    expect(foreign.ok ? [] : foreign.issues.map((issue) => printWords('es').issue(issue))).toEqual([
      'El signo "Ł" de "Łódź" no se puede imprimir. Escríbelo con letras del español o del inglés.',
      'El signo "ź" de "Łódź" no se puede imprimir. Escríbelo con letras del español o del inglés.',
    ]);
  });
});
