// Texts of the web app's screens. They stand apart from the words about builds, so that the first screen loads only these.

import type { screens } from './en/screens/index.ts';
import type { TextsOf, TextWords } from './text-words.ts';

export type EnglishScreens = typeof screens;
export type ScreenKey = keyof EnglishScreens;
export type ScreenTexts = TextsOf<EnglishScreens>;
export type ScreenWords = TextWords<EnglishScreens>;
