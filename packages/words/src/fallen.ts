// Builds that fell, and what they count all the same.

import type { AttemptState, Challenge } from '@cairnmark/engine';
import { counted } from './amounts.ts';
import type { Catalogue } from './catalogue.ts';
import { fill } from './say.ts';

/** "Fell after 4 seconds." */
export const fellSentence = (state: Fell, words: Catalogue): string =>
  state.kind === 'fell'
    ? fill(words.results['out.fell-after'], { seconds: counted('seconds', state.afterSeconds, words) })
    : words.results['out.fell'];

/** That a build fell, and what that counts; null for one that did not fall. */
export function fallenSentence(state: AttemptState, rule: Challenge['fallen'], words: Catalogue): string | null {
  if (state.kind !== 'fell' && state.kind !== 'fell-before-measuring') return null;
  return fill(words.results[`fallen.${rule.counts}`], {
    fell: fellSentence(state, words),
    points: stated(rule, words),
  });
}

/** What the challenge says of builds that fall. */
export const fallingSentence = (rule: Challenge['fallen'], words: Catalogue): string =>
  fill(words.results[`falling.${rule.counts}`], { points: stated(rule, words) });

type Fell = Extract<AttemptState, { kind: 'fell' | 'fell-before-measuring' }>;

const stated = (rule: Challenge['fallen'], words: Catalogue): string =>
  rule.counts === 'points' ? counted('points', rule.points, words) : '';
