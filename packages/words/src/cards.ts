// Texts of the Score card and of the Board. Apart from those of the first screens: Build does not wait for them.

import type { cards } from './en/screens/cards.ts';
import type { Language } from './language.ts';
import type { Values } from './say.ts';
import { fill } from './say.ts';
import type { EnglishScreens, ScreenTexts } from './screens.ts';

export type EnglishCards = typeof cards;
export type CardTexts = Readonly<Record<keyof EnglishCards, string>>;

type English = EnglishScreens & EnglishCards;

export interface CardWords {
  readonly language: Language;
  /** A text of these screens, or of the others. */
  say<K extends keyof English>(key: K, ...values: Values<English[K]>): string;
}

export const cardWordsIn = (language: Language, texts: ScreenTexts & CardTexts): CardWords => ({
  language,
  say: (key, ...[values = {}]) => fill(texts[key], values),
});
