import type { Issue, Ruler } from '@cairnmark/geometry';
import { expect, it } from 'vitest';
import { printWords, wordsFor } from './at-once.ts';
import type { Language } from './language.ts';
import type { PrintIssueCode } from './print.ts';

/** What each code tells, as the package that finds it says. A code without a line here is a type error. */
const DETAILS: Readonly<Record<PrintIssueCode, Issue['details']>> = {
  'character-unprintable': { character: 'π', text: 'π is 3.14' },
  'text-too-wide': { text: 'Circumference', neededMm: 17.505, roomMm: 16 },
  'text-too-high': { text: 'One two three', neededMm: 21.9, roomMm: 11 },
  'part-too-wide': { neededMm: 195, roomMm: 194 },
  'part-too-high': { neededMm: 300.25, roomMm: 267 },
  'outline-too-large': { id: 'Cube 7', widthMm: 199.9, heightMm: 249.4 },
  'pages-too-many': { count: 3, most: 2 },
  'no-supply-game': {},
  'no-table-cards': {},
  'no-marks': {},
};

it('everything that keeps a sheet from being printed has a sentence in both languages, with its lengths in mm', () => {
  for (const [code, details] of Object.entries(DETAILS)) {
    const issue = { code: code as PrintIssueCode, path: ['blocks', 3], details };
    const [english, spanish] = [printWords('en').issue(issue), printWords('es').issue(issue)];
    expect(english).not.toBe(spanish);
    for (const sentence of [english, spanish]) {
      expect(sentence).toMatch(/^\S.*\.$/);
      expect(sentence).not.toMatch(/[{}?]|undefined/);
      for (const value of Object.values(details)) if (typeof value === 'string') expect(sentence).toContain(value);
      const lengths = Object.keys(details).filter((key) => key.endsWith('Mm'));
      expect(sentence.match(/\d mm/g) ?? []).toHaveLength(lengths.length);
    }
  }
});

it('a net that is left out is told with the largest size, never above what the ruler reads', () => {
  const issue = {
    code: 'too-large',
    path: [],
    details: { paper: 'A4', size: 'edge', largestMm: 63, parts: 3 },
  } as const;
  const told = (language: Language, ruler: Ruler, changes = {}) =>
    printWords(language).leftOut(
      'Cube',
      { ...issue, details: { ...issue.details, ...changes } },
      wordsFor(language),
      ruler,
    );
  expect(told('en', { id: 'half-inch', unit: 'in', stepMm: 12.7 })).toBe(
    'Cube is too large for A4. In this shape, its edge can be 2 in at most. Or let it be printed in 3 parts.',
  );
  expect(told('en', { id: 'half-cm', unit: 'cm', stepMm: 5 }, { parts: 0 })).toBe(
    'Cube is too large for A4, and no way to part it helps. In this shape, its edge can be 6.0 cm at most.',
  );
  // Below the first division of the ruler.
  expect(told('es', { id: 'cm', unit: 'cm', stepMm: 10 }, { largestMm: 7.5 })).toBe(
    'Cube es demasiado grande para A4. Con esta forma, su arista puede medir 0,75 cm como máximo. O deja que se imprima en 3 partes.',
  );
  const ball = { code: 'no-net', path: [], details: { solid: 'sphere' } } as const;
  expect(printWords('es').leftOut('Bola', ball, wordsFor('es'), { id: 'mm', unit: 'mm', stepMm: 1 })).toBe(
    'Bola no tiene desarrollo: el papel plano no se dobla en bola. Usa una comprada.',
  );
});

it('lengths are told to a tenth of a mm, with the mark of the language', () => {
  const issue = { code: 'part-too-high', path: [], details: DETAILS['part-too-high'] } as const;
  expect(printWords('en').issue(issue)).toBe(
    'A part of the sheet is 300.3 mm high, and a page holds 267 mm. Split it.',
  );
  expect(printWords('es').issue(issue)).toBe(
    'Una parte de la hoja mide 300,3 mm de alto y en una página caben 267 mm. Divídela.',
  );
});
