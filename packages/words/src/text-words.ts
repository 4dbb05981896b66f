// Texts of one language by their keys, said with their values. English is the pattern: a key or a value that it does not
// have is a type error.

import type { Language } from './language.ts';
import type { Values } from './say.ts';
import { fill } from './say.ts';

export interface TextWords<English extends Readonly<Record<string, string>>> {
  readonly language: Language;
  say<K extends keyof English>(key: K, ...values: Values<English[K]>): string;
}

/** The texts of any language: those of English, in other words. */
export type TextsOf<English> = Readonly<Record<keyof English, string>>;

export const textWords = <English extends Readonly<Record<string, string>>>(
  language: Language,
  texts: TextsOf<English>,
): TextWords<English> => ({
  language,
  say: (key, ...[values = {}]) => fill(texts[key], values),
});
