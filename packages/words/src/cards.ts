// Texts of the Score card and of the Board. Apart from those of the first screens: Build does not wait for them.

import type { cards } from './en/screens/cards.ts';
import type { EnglishScreens } from './screens.ts';
import type { TextsOf, TextWords } from './text-words.ts';

export type EnglishCards = typeof cards;
export type CardTexts = TextsOf<EnglishCards>;
export type CardKey = keyof (EnglishScreens & EnglishCards);
/** With the texts of the first screens: the cards use both. */
export type CardWords = TextWords<EnglishScreens & EnglishCards>;
