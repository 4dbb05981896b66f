// States of the Board: every challenge of the demo class.

import { demoClass } from '@cairnmark/demo';
import { goTo, openDemo, openScreen } from '../tools/classes.ts';
import type { State } from './state.ts';

export const board: readonly State[] = demoClass().challenges.map(({ id, name }) => ({
  name: `board-${id}`,
  go: async (page) => {
    await openDemo(page);
    await goTo(page, name);
    await openScreen(page, 'board');
  },
}));
