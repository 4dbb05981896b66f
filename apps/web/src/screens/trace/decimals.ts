// Numbers with so many decimals at most, as the language writes them.

import type { BuildWords } from '../../app/use-build-words.ts';

export const decimals =
  ({ words }: BuildWords) =>
  (value: number, most: number): string =>
    words.number(Number(value.toFixed(most)));
