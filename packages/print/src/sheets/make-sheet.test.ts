import { describe, expect, it } from 'vitest';
import { writePdf } from '../pdf/write-pdf.ts';
import { SHEETS } from './catalogue.ts';
import { copiesOf } from './copies.ts';
import { codesOf, dataOf, GAME, pagesOf, readyClass, recordOf, textsOn } from './for-tests.ts';
import { lacking, makeSheet } from './make-sheet.ts';

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

  it('leave out what the class is not shown', () => {
    const hidden = readyClass({ hidden: ['paper', 'volume'] });
    const texts = textsOn(pagesOf('measure-older', dataOf(hidden))).join(' ');
    expect(texts).not.toMatch(/volume|slant/i);
    expect(texts).toMatch(/corners/i);
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
