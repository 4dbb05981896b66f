// The texts of the screens: every language fills in the same values, and none is left in another language.

import { expect, it } from 'vitest';
import { screenWords, wordsFor } from './at-once.ts';
import type { EnglishCards } from './cards.ts';
import { plan as englishPlan } from './en/plan/index.ts';
import { printed as englishPrinted } from './en/print/index.ts';
import { cards as englishCards } from './en/screens/cards.ts';
import { screens as englishScreens } from './en/screens/index.ts';
import { talk as englishTalk } from './en/talk/index.ts';
import { own as spanishOwn } from './es/own.ts';
import { plan as spanishPlan } from './es/plan/index.ts';
import { printed as spanishPrinted } from './es/print/index.ts';
import { cards as spanishCards } from './es/screens/cards.ts';
import { screens as spanishScreens } from './es/screens/index.ts';
import { talk as spanishTalk } from './es/talk/index.ts';
import type { PlanKey } from './plan.ts';
import type { PrintKey } from './print.ts';
import type { ScreenKey } from './screens.ts';
import type { TalkKey } from './talk.ts';

const english = { ...englishScreens, ...englishCards, ...englishPlan, ...englishTalk, ...englishPrinted.texts };
const spanish = { ...spanishScreens, ...spanishCards, ...spanishPlan, ...spanishTalk, ...spanishPrinted.texts };
const keys = Object.keys(english) as (ScreenKey | keyof EnglishCards | PlanKey | TalkKey | PrintKey)[];

it('no text stands under the same name in two catalogues', () => {
  const all = [englishScreens, englishCards, englishPlan, englishTalk, englishPrinted.texts].flatMap((texts) =>
    Object.keys(texts),
  );
  expect(all.filter((key, k) => all.indexOf(key) !== k)).toEqual([]);
});

const valuesIn = (text: string): string[] => [...text.matchAll(/\{(\w+)\}/g)].map(([, name]) => name ?? '').sort();

it('every text fills in the same values in both languages', () => {
  const different = keys.filter((key) => `${valuesIn(english[key])}` !== `${valuesIn(spanish[key])}`);
  expect(different).toEqual([]);
});

it('a text of several words is not the same in both languages', () => {
  const same = keys.filter((key) => english[key] === spanish[key] && /\p{L}{3,} \p{L}{3,}/u.test(english[key]));
  expect(same).toEqual([]);
});

it.each([
  ['English', english],
  ['Spanish', spanish],
])('no text in %s is empty, or begins or ends with a space', (_, texts) => {
  expect(keys.filter((key) => texts[key] === '' || texts[key] !== texts[key].trim())).toEqual([]);
});

it('Spanish has one word for a corner and one for a slant height, on screens and on paper', () => {
  // The view from a corner of the table is no vertex.
  const views = ['view.corner', 'keys.views'];
  const texts = Object.entries({ ...spanish, ...spanishOwn }).filter(([key]) => !views.includes(key));
  const all = [...texts.map(([, text]) => text), JSON.stringify(wordsFor('es').names)];
  expect(all.filter((text) => /esquina|altura inclinada/i.test(text))).toEqual([]);
  expect(all.some((text) => /apotema/.test(text))).toBe(true);
});

it('a text is said with its values', () => {
  const values = { group: 'Terns', number: 3 };
  expect(screenWords('en').say('frame.try', values)).toBe('Terns, try 3');
  expect(screenWords('es').say('frame.try', values)).toBe('Terns, intento 3');
});
