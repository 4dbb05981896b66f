// Points in words. Points of a column, with the same decimals all the way down; a question mark for those that are not known.

import type { Words } from '@cairnmark/words';

export const pointsText = (points: number | null, decimals: number, words: Words): string =>
  points === null ? '?' : words.number(points, decimals);

/** What stands below a total. */
export const pointsUnit = (total: number | null): 'score-card.no-total' | 'score-card.point' | 'score-card.points' =>
  total === null ? 'score-card.no-total' : Math.abs(total) === 1 ? 'score-card.point' : 'score-card.points';
