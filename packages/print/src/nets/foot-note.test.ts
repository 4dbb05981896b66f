// The rows of words above the foot of a page of nets: read by young pupils, and beside the nets. mm.

import { makeSolid } from '@cairnmark/geometry';
import { LANGUAGES, printWords } from '@cairnmark/words';
import { expect, it } from 'vitest';
import { boundsOf } from '../bounds-of.ts';
import { usableArea } from '../frame/frame.ts';
import { PAPER_SIZES } from '../page/paper.ts';
import { netSheets } from './net-sheets.ts';

/** mm of font size. A point is 25.4 / 72 mm. */
const NINE_POINTS_MM = (9 * 25.4) / 72;

const solidOf = (edge: number) => {
  const made = makeSolid({ solid: 'cube', sizes: { edge } });
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  return made.value;
};

it.each(LANGUAGES)(
  'all of them have nine points, keep to their page and off each other and the nets, in %s',
  (language) => {
    const words = printWords(language);
    const kinds = [100, 7].map((edge) => ({ id: `k${edge}`, name: `K${edge}`, solid: solidOf(edge), count: 1 }));
    const keys = ['net-cut', 'net-fold', 'net-tab', 'net-tape', 'net-letters', 'net-caution'] as const;
    const texts = keys.map((key) => words.say(`print.${key}`));
    const seen = new Set<string>();
    for (const paper of PAPER_SIZES) {
      // A large cube in parts and a small one that needs tape: all that can be said.
      const sheets = netSheets({ kinds, paper, arrange: 'mixed', tabDepthMm: 8, large: 'split' }, words, () => true);
      if (!sheets.ok || sheets.value === null) throw new Error(JSON.stringify(sheets));
      const { cornerMm, widthMm } = usableArea({ size: paper, orientation: 'portrait' });
      for (const { marks } of sheets.value.pages) {
        const below = marks
          .filter((mark) => mark.kind !== 'writing' || mark.turnRad === 0)
          .filter((mark) => {
            return boundsOf(mark).top < cornerMm[1] + 1;
          });
        const boxes = below.map(boundsOf);
        for (const one of boxes) {
          expect(one.top).toBeLessThanOrEqual(cornerMm[1]);
          expect(one.right).toBeLessThanOrEqual(cornerMm[0] + widthMm + 1e-9);
        }
        const lines = below.filter((mark) => mark.kind === 'writing');
        for (const mark of lines.filter(({ text }) => texts.includes(text))) {
          seen.add(mark.text);
          expect(mark.sizeMm).toBeGreaterThanOrEqual(NINE_POINTS_MM);
          const { left, right, bottom, top } = boundsOf(mark);
          for (const other of lines.filter((one) => one !== mark).map(boundsOf)) {
            expect(other.left >= right + 1 || other.right <= left - 1 || other.bottom > top || other.top < bottom).toBe(
              true,
            );
          }
        }
      }
    }
    expect([...seen].sort()).toEqual([...texts].sort());
  },
);
