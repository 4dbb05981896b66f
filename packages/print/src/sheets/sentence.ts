// A phrase as a sentence of its own.

import type { SheetWords } from './data.ts';

/** With a capital, and a full stop where it has no end. */
export const sentence = (text: string, { words }: SheetWords): string =>
  `${words.capital(text)}${/[.!?]$/.test(text) ? '' : '.'}`;
