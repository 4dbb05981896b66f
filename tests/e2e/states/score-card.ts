// States of the Score card.

import { openDemo, openScreen } from '../tools/classes.ts';
import type { State } from './state.ts';

export const scoreCard: readonly State[] = [
  {
    name: 'score-card',
    go: async (page) => {
      await openDemo(page);
      await openScreen(page, 'score');
    },
  },
];
