// States of Start.

import { ROOT, readText } from '../../tools/files.ts';
import { allKept, chooseFile, openDemo, openStart } from '../tools/classes.ts';
import type { State } from './state.ts';

export const start: readonly State[] = [
  { name: 'start', go: async () => undefined },
  { name: 'start-spanish', device: { locale: 'es-ES' }, go: async () => undefined },
  {
    name: 'start-kept',
    go: async (page) => {
      for (let times = 0; times < 2; times += 1) {
        await openDemo(page);
        await allKept(page);
        await openStart(page);
      }
    },
  },
  {
    name: 'start-refused',
    go: async (page) => {
      await chooseFile(page, 'from-a-friend.json', readText(ROOT, 'tests/corpus/broken/challenge-unknown.json'));
      await page.getByRole('alert').waitFor();
    },
  },
];
