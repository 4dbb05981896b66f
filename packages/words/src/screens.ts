// Texts of the web app's screens. They stand apart from the words about builds, so that the first screen loads only these.

import { board as enBoard } from './en/screens/board.ts';
import { build as enBuild } from './en/screens/build.ts';
import { field as enField } from './en/screens/field.ts';
import { frame as enFrame } from './en/screens/frame.ts';
import { scoreCard as enScoreCard } from './en/screens/score-card.ts';
import { start as enStart } from './en/screens/start.ts';
import { board as esBoard } from './es/screens/board.ts';
import { build as esBuild } from './es/screens/build.ts';
import { field as esField } from './es/screens/field.ts';
import { frame as esFrame } from './es/screens/frame.ts';
import { scoreCard as esScoreCard } from './es/screens/score-card.ts';
import { start as esStart } from './es/screens/start.ts';
import type { Language } from './language.ts';
import type { Values } from './say.ts';
import { fill } from './say.ts';

const english = { ...enFrame, ...enField, ...enStart, ...enBuild, ...enScoreCard, ...enBoard };

export type EnglishScreens = typeof english;
export type ScreenKey = keyof EnglishScreens;

const spanish: Readonly<Record<ScreenKey, string>> = {
  ...esFrame,
  ...esField,
  ...esStart,
  ...esBuild,
  ...esScoreCard,
  ...esBoard,
};

const TEXTS: Readonly<Record<Language, Readonly<Record<ScreenKey, string>>>> = { en: english, es: spanish };

export interface ScreenWords {
  readonly language: Language;
  /** A text of a screen. */
  say<K extends ScreenKey>(key: K, ...values: Values<EnglishScreens[K]>): string;
}

export function screenWords(language: Language): ScreenWords {
  const texts = TEXTS[language];
  return { language, say: (key, ...[values = {}]) => fill(texts[key], values) };
}

/** All texts of the screens of a language, for checks over the whole catalogue. */
export const screenTexts = (language: Language): Readonly<Record<ScreenKey, string>> => TEXTS[language];
