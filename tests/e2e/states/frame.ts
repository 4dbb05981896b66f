// States of the frame round every screen: its dialogs, and what it tells when nothing can be kept.

import { openDemo } from '../tools/classes.ts';
import { KEEPING_NOTHING } from '../tools/storage.ts';
import { english } from '../tools/words.ts';
import type { State } from './state.ts';

export const frame: readonly State[] = [
  {
    name: 'settings',
    go: async (page) => {
      await openDemo(page);
      await page.getByRole('button', { name: english('frame.settings') }).click();
    },
  },
  {
    name: 'who',
    go: async (page) => {
      await openDemo(page);
      await page.getByRole('button', { name: english('frame.change-group') }).click();
    },
  },
  { name: 'not-kept', device: { before: KEEPING_NOTHING['has no database'] }, go: openDemo },
  {
    name: 'not-here',
    device: { provokes: /ERR_FAILED/ },
    go: async (page) => {
      await page.route(/board-[\w-]+\.js$/, (route) => route.abort());
      await openDemo(page);
      await page.getByRole('link', { name: english('tab.board'), exact: true }).click();
      await page.getByRole('button', { name: english('frame.again') }).waitFor();
    },
  },
  { name: 'no-class', device: { at: '#/score' }, go: async () => undefined },
];
