// How sheets look in either print.

import { LANGUAGES } from '@cairnmark/words';
import { describe, expect, it } from 'vitest';
import type { Page } from '../page/page.ts';
import { SHEETS } from './catalogue.ts';
import { dataOf, GAME, pagesOf, readyClass, sheetWords, textsOn } from './for-tests.ts';
import type { SheetId } from './sheet-kind.ts';

describe('large print', () => {
  const grades = ['grades-2-3', 'grades-6-8'] as const;
  const judged = { id: 't', kind: 'judged', text: 'No tape.', consequence: { kind: 'must' } } as const;

  it.each(LANGUAGES)('writes nothing smaller than usual print does, in %s', (language) => {
    const seen = new Set<SheetId>();
    for (const gradePreset of grades) {
      const challenge = readyClass({ gradePreset, supply: GAME, requirements: [judged] });
      const ids = Object.values(SHEETS).map(({ id }) => id);
      for (const id of ids.filter((one) => one !== 'table-cards')) {
        const sizes = (['usual', 'large'] as const).map((print) => {
          const data = dataOf(challenge, { print, paper: 'letter', words: sheetWords(language) });
          return leastSizes(pagesOf(id, data));
        });
        const smaller = [...sizes[0]!].filter(([word, sizeMm]) => (sizes[1]!.get(word) ?? sizeMm) < sizeMm);
        expect([id, smaller]).toEqual([id, []]);
        seen.add(id);
      }
    }
    expect(seen.size).toBe(Object.keys(SHEETS).length - 1);
  });
});

/** mm of font size, by word: the smallest that it is written in, small titles of further pages left out. */
function leastSizes(pages: readonly Page[]): ReadonlyMap<string, number> {
  const sizes = new Map<string, number>();
  for (const mark of pages.flatMap(({ marks }) => marks)) {
    if (mark.kind !== 'writing' || /, p\S+ \d+$/.test(mark.text)) continue;
    for (const word of mark.text.split(' ')) sizes.set(word, Math.min(sizes.get(word) ?? mark.sizeMm, mark.sizeMm));
  }
  return sizes;
}

it('a page that a sheet goes on on bears its title, small and once', () => {
  const many = Array.from({ length: 40 }, (_, k) => {
    return { id: `${k}`, kind: 'judged', text: `Rule number ${k}`, consequence: { kind: 'must' } } as const;
  });
  const pages = pagesOf('rules', dataOf(readyClass({ name: 'Tall', requirements: many }), { print: 'large' }));
  const heads = pages.map((page) => textsOn([page])[0]);
  expect(heads).toEqual(['Rule sheet: Tall', ...pages.slice(1).map((_, k) => `Rule sheet: Tall, page ${k + 2}`)]);
  expect(pages.length).toBeGreaterThan(1);
  // Pages with a title of their own do with that.
  const ready = readyClass();
  const kinds = Array.from({ length: 15 }, (_, k) => ({ ...ready.kit.kinds[k % 8]!, id: `k${k}` }));
  const tables = pagesOf('measure-young', dataOf(readyClass({ kit: { ...ready.kit, kinds } })));
  expect(tables.map((page) => textsOn([page])[0])).toEqual(tables.map(() => 'Measuring table'));
});
