// Challenges say whether groups are told how near they come to the best possible build. No group of an older file was.

import type { Step } from '../steps.ts';

export const BEST_SHOWN_STEPS: readonly Step[] = [
  { format: 'challenge', from: 4, name: 'best-shown', up: (content) => content },
  { format: 'class', from: 5, name: 'best-shown-in-each-challenge', up: (content) => content },
];
