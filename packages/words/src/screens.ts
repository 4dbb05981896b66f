// Texts of the web app's screens. They stand apart from the words about builds, so that the first screen loads only these.

import type { screens } from './en/screens/index.ts';
import type { Language } from './language.ts';
import type { Values } from './say.ts';
import { fill } from './say.ts';

export type EnglishScreens = typeof screens;
export type ScreenKey = keyof EnglishScreens;
export type ScreenTexts = Readonly<Record<ScreenKey, string>>;

export interface ScreenWords {
  readonly language: Language;
  /** A text of a screen. */
  say<K extends ScreenKey>(key: K, ...values: Values<EnglishScreens[K]>): string;
}

export const screenWordsIn = (language: Language, texts: ScreenTexts): ScreenWords => ({
  language,
  say: (key, ...[values = {}]) => fill(texts[key], values),
});
