import type { Challenge } from '@cairnmark/engine';
import type { SupplyRule } from '@cairnmark/scoring';
import { LANGUAGES } from '@cairnmark/words';
import { describe, expect, it } from 'vitest';
import type { Page } from '../page/page.ts';
import { writePdf } from '../pdf/write-pdf.ts';
import { SHEETS } from './catalogue.ts';
import { copiesOf } from './copies.ts';
import type { SheetData } from './data.ts';
import { dataOf, readyClass, recordOf, sheetWords } from './for-tests.ts';
import { lacking, makeSheet } from './make-sheet.ts';
import type { SheetId } from './sheet-kind.ts';

const GAME: SupplyRule = { ends: { kind: 'turns', turns: 7 }, handOver: 'at-a-touch', dropped: 'lost-this-turn' };

function pagesOf(id: SheetId, data: SheetData): readonly Page[] {
  const made = makeSheet(id, data);
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  return made.value;
}

const codesOf = (id: SheetId, data: SheetData): readonly string[] => {
  const made = makeSheet(id, data);
  return made.ok ? [] : [...new Set(made.issues.map(({ code }) => code))];
};

const textsOn = (pages: readonly Page[]): readonly string[] =>
  pages.flatMap(({ marks }) => marks.flatMap((mark) => (mark.kind === 'writing' ? [mark.text] : [])));

describe('the catalogue of sheets', () => {
  it('lists each under its own name', () => {
    expect(Object.values(SHEETS).map(({ id }) => id)).toEqual(Object.keys(SHEETS));
  });

  it('tells how many copies a class needs', () => {
    const many = { record: recordOf(readyClass(), 5), pupils: 27 };
    expect((['class', 'group', 'pair', 'pupil'] as const).map((one) => copiesOf(one, many))).toEqual([1, 5, 14, 27]);
    expect(copiesOf('group', { record: recordOf(readyClass(), 0), pupils: 0 })).toBe(1);
  });

  it('tells what a class lacks for a sheet, and refuses to make it', () => {
    const data = dataOf(readyClass());
    expect(Object.values(SHEETS).filter(({ id }) => lacking(id, data) !== null)).toHaveLength(3);
    expect(codesOf('game', data)).toEqual(['no-supply-game']);
    expect(codesOf('table-cards', data)).toEqual(['no-table-cards']);
    expect(codesOf('game', dataOf(readyClass({ supply: GAME })))).toEqual([]);
  });

  it('has no marks, no judge and no copies to count where nothing is marked or judged', () => {
    const textOf = (id: SheetId, challenge: Challenge) => textsOn(pagesOf(id, dataOf(challenge))).join(' ');
    const isThere = (challenge: Challenge) => [
      codesOf('rubric', dataOf(challenge)),
      textOf('materials', challenge).includes('Marks of a judge'),
      textOf('roles', challenge).includes('Judge'),
    ];
    expect(isThere(readyClass({ requirements: [] }))).toEqual([['no-marks'], false, false]);
    const idea = { criteria: [{ id: 'idea', name: 'Idea' }], requirements: [] };
    const tape = { id: 't', kind: 'judged', text: 'No tape.', consequence: { kind: 'must' } } as const;
    for (const changes of [idea, { requirements: [tape] }, { ...idea, supply: GAME }]) {
      expect(isThere(readyClass(changes))).toEqual([[], true, true]);
    }
    // Marks from 0 to 4 stand where something is marked, never over yes and no alone.
    expect(textOf('rubric', readyClass(idea))).toContain('half way');
    expect(textOf('rubric', readyClass({ requirements: [tape] }))).not.toContain('half way');
    for (const supply of [null, GAME]) {
      expect(textOf('roles', readyClass({ requirements: [], supply }))).toContain('Speaker');
    }
  });
});

describe('a sheet that does not fit', () => {
  it('is refused with its place, never cut off', () => {
    const judged = (text: string) => ({
      id: text,
      kind: 'judged' as const,
      text,
      consequence: { kind: 'must' as const },
    });
    const many = Array.from({ length: 300 }, (_, k) => judged(`Rule number ${k}`));
    expect(codesOf('rules', dataOf(readyClass({ requirements: many })))).toEqual(['pages-too-many']);
    const word = 'W'.repeat(90);
    expect(codesOf('rules', dataOf(readyClass({ requirements: [judged(word)] })))).toEqual(['text-too-wide']);
  });

  it('a sign that cannot be printed is told', () => {
    const made = makeSheet('rules', dataOf(readyClass({ name: 'Höher → höher' })));
    expect(made.ok ? [] : made.issues[0]).toMatchObject({
      code: 'character-unprintable',
      path: ['blocks', 0],
      details: { character: '→' },
    });
  });
});

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

/** mm of font size, by word: the smallest that it is written in, small titles of further pages left out. */
function leastSizes(pages: readonly Page[]): ReadonlyMap<string, number> {
  const sizes = new Map<string, number>();
  for (const mark of pages.flatMap(({ marks }) => marks)) {
    if (mark.kind !== 'writing' || /, p\S+ \d+$/.test(mark.text)) continue;
    for (const word of mark.text.split(' ')) sizes.set(word, Math.min(sizes.get(word) ?? mark.sizeMm, mark.sizeMm));
  }
  return sizes;
}

it('pi and the minus are written in signs that can be printed', () => {
  const base = { id: 'b', measure: 'base-area', points: -2, per: 100, rounding: 'down' } as const;
  const challenge = readyClass({ points: [base], own: { pi: '22/7', closeShare: 0.05, rewards: [] } });
  expect(textsOn(pagesOf('rules', dataOf(challenge)))).toContain('–2 points');
  expect(textsOn(pagesOf('answer-key', dataOf(challenge))).join(' ')).toContain('worked out with pi as 22/7.');
});

describe('tables', () => {
  it('go on on a page of their own when the kit has more kinds than rows', () => {
    const ready = readyClass();
    const kinds = Array.from({ length: 30 }, (_, k) => ({
      ...ready.kit.kinds[k % 8]!,
      id: `k${k}`,
      name: `Kind ${k}`,
    }));
    const data = dataOf(readyClass({ kit: { ...ready.kit, kinds } }));
    const pages = (['measure-young', 'measure-older', 'answer-key'] as const).map((id) => pagesOf(id, data));
    expect(pages.map(({ length }) => length)).toEqual([5, 3, 3]);
    for (const table of pages) {
      const texts = textsOn(table);
      for (const { name } of kinds) expect(texts.filter((text) => text === name)).toHaveLength(1);
    }
  });

  it('have a row for every group of a day', () => {
    const data = dataOf(readyClass(), { record: recordOf(readyClass(), 24) });
    for (const id of ['results', 'record', 'record-pieces'] as const) {
      const texts = textsOn(pagesOf(id, data));
      for (const { name } of data.record.groups) expect([id, texts.includes(name)]).toEqual([id, true]);
    }
  });

  it('to record on name what the app works out, and how; only where it is asked for', () => {
    const row = { id: 'a', measure: 'base-area', points: 1, per: 100, rounding: 'none' } as const;
    const rule = {
      id: 'v',
      kind: 'measured',
      measure: 'volume',
      comparison: 'at-most',
      limit: 1000,
      consequence: { kind: 'must' },
    } as const;
    const textOf = (changes: Partial<Challenge>) => textsOn(pagesOf('record', dataOf(readyClass(changes)))).join(' ');
    const asked = textOf({
      points: [row, { ...row, id: 'h', measure: 'height' }],
      requirements: [rule],
      ranking: { first: { by: 'courtyard-area', better: 'more', roundTo: 0 }, tieBreaks: [] },
    });
    expect(asked).toContain('Courtyard and area on the table: stack the build in the app afterwards.');
    expect(asked).toContain('Volume: type the pieces in kind by kind.');
    const plain = textOf({ points: [{ ...row, measure: 'height' }], requirements: [] });
    expect(plain).not.toMatch(/works this out/);
    // The lesson plan has pupils say a height beforehand where it counts.
    const planOf = (by: string) => {
      const ranking = { first: { by, better: 'more', roundTo: 0 }, tieBreaks: [] } as const;
      const challenge = readyClass({ points: [], requirements: [], ranking });
      return textsOn(pagesOf('lesson-plan', dataOf(challenge))).join(' ');
    };
    expect(['height', 'pieces'].map((by) => planOf(by).includes('how high it will be'))).toEqual([true, false]);
  });

  it('tell a rounding from a tenth of the unit on, and where a height comes from in the order that counts', () => {
    const by = (roundTo: number) => ({
      points: [{ id: 'h', measure: 'height', points: 1, per: 10, rounding: 'none' } as const],
      ranking: { first: { by: 'base-area', better: 'less', roundTo } as const, tieBreaks: [] },
    });
    const rulesOf = (changes: Partial<Challenge>) => textsOn(pagesOf('rules', dataOf(readyClass(changes)))).join(' ');
    // mm²: a hundredth of a cm², and a tenth.
    expect(rulesOf(by(1))).toContain('Area on the table, less is better. ');
    expect(rulesOf(by(10))).toContain('less is better, rounded to 0.1 cm².');
    expect(rulesOf(by(1))).toContain(
      'Height: read with the ruler. If that is missing: from the photo, else from the drawing.',
    );
    expect(rulesOf({ ...by(1), heightCounts: ['photo'] })).toMatch(/Height: from the photo\. (?!If)/);
  });

  it('leave out what the class is not shown', () => {
    const hidden = readyClass({ hidden: ['paper', 'volume'] });
    const texts = textsOn(pagesOf('measure-older', dataOf(hidden))).join(' ');
    expect(texts).not.toMatch(/volume|slant/i);
    expect(texts).toMatch(/corners/i);
  });

  it('of what is needed are added up for all groups', () => {
    const texts = textsOn(pagesOf('materials', dataOf(readyClass())));
    const cellsAfter = (text: string): readonly string[] =>
      texts.slice(texts.indexOf(text) + 1, texts.indexOf(text) + 3);
    expect(cellsAfter('Sheets for one set of nets, A4, 160 g/m²')).toEqual(['7', '42']);
    expect(cellsAfter('Scissors')).toEqual(['3', '18']);
    // One bought ball for each of six groups.
    expect(cellsAfter('Piece ball, not of paper')).toEqual(['1', '6']);
  });
});

it('the same class gives the same bytes', () => {
  const bytes = () => {
    const pdf = writePdf(pagesOf('answer-key', dataOf(readyClass())), 'Answer key', 'en');
    return pdf.ok ? pdf.value : null;
  };
  expect(bytes()).not.toBeNull();
  expect(bytes()).toEqual(bytes());
});
