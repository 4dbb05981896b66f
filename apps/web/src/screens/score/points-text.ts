// Points of a column, with the same decimals all the way down; a question mark for those that are not known.

import type { Words } from '@cairnmark/words';

export const pointsText = (points: number | null, decimals: number, words: Words): string =>
  points === null ? '?' : words.number(points, decimals);
