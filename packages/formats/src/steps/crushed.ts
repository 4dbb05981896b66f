// Pieces out of use: kits say how many pieces of a kind are crushed. Files written before this have no such number, and none
// of their pieces counts as crushed.

import type { Step } from '../steps.ts';

export const CRUSHED_STEPS: readonly Step[] = [
  { format: 'kit', from: 2, name: 'crushed-pieces', up: (content) => content },
  { format: 'challenge', from: 3, name: 'crushed-pieces-of-its-kit', up: (content) => content },
  { format: 'class', from: 3, name: 'crushed-pieces-of-each-kit', up: (content) => content },
];
