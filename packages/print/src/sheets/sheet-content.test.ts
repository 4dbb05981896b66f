// What sheets tell a class, as its challenge is.

import type { Challenge } from '@cairnmark/engine';
import { expect, it } from 'vitest';
import { codesOf, dataOf, GAME, pagesOf, readyClass, recordOf, textsOn } from './for-tests.ts';
import type { SheetId } from './sheet-kind.ts';

it('a class has no marks, no judge and no copies to count where nothing is marked or judged', () => {
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

it('the record sheet names what the app works out, and how; only where it is asked for', () => {
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

it('rules tell a rounding from a tenth of the unit on, and where a height comes from in the order that counts', () => {
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

it('what is needed is added up for all groups', () => {
  const texts = textsOn(pagesOf('materials', dataOf(readyClass())));
  const cellsAfter = (text: string): readonly string[] => texts.slice(texts.indexOf(text) + 1, texts.indexOf(text) + 3);
  expect(cellsAfter('Sheets for one set of nets, A4, 160 g/m²')).toEqual(['7', '42']);
  expect(cellsAfter('Scissors')).toEqual(['3', '18']);
  // 27 pupils in six groups.
  expect(cellsAfter('Pencils')).toEqual(['5', '27']);
  // One bought ball for each of six groups.
  expect(cellsAfter('Piece ball, not of paper')).toEqual(['1', '6']);
  // Six balls do not go round among seven groups; without pages of nets nothing is told of spare ones.
  const seven = dataOf(readyClass(), { record: recordOf(readyClass(), 7), netPages: null });
  const few = textsOn(pagesOf('materials', seven));
  expect(few.slice(few.indexOf('Piece ball, not of paper') + 1).slice(0, 2)).toEqual(['to share', '6']);
  expect([texts, few].map((all) => all.includes('Spare sheets, for slips'))).toEqual([true, false]);
});

it('the lesson plan has an adult cut for young pupils, and names the solids that are hard to make', () => {
  const planOf = (gradePreset: Challenge['gradePreset']) =>
    textsOn(pagesOf('lesson-plan', dataOf(readyClass({ gradePreset })))).join(' ');
  const [young, older] = [planOf('grades-2-3'), planOf('grades-6-8')];
  expect([young, older].map((text) => text.includes('An adult cuts.'))).toEqual([true, false]);
  for (const text of [young, older]) expect(text).toMatch(/An adult makes the hard ones, .*: .*Piece cylinder.*\./);
});
