// Points in words. Points of a column, with the same decimals all the way down; a question mark for those that are not known.

import type { Words } from '@cairnmark/words';
import { decimalsOf } from '../../parts/decimals.ts';

export const pointsText = (points: number | null, decimals: number, words: Words): string =>
  points === null ? '?' : words.number(points, decimals);

/** What stands below a total. */
export const pointsUnit = (total: number | null): 'score-card.no-total' | 'score-card.point' | 'score-card.points' =>
  total === null ? 'score-card.no-total' : Math.abs(total) === 1 ? 'score-card.point' : 'score-card.points';

/** How far two totals are apart: the other one may have more decimals than those of this card. */
export const apartText = (apart: number, decimals: number, words: Words): string =>
  words.number(Math.abs(apart), Math.max(decimals, decimalsOf([apart])));
