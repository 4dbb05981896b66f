// States of Fair points: today's points, found ones and why there are none, the class ranked anew, a riddle.

import type { Page } from 'playwright-core';
import { favour, mostEven, openFair, useFirstRule } from '../tools/fair.ts';
import { english, englishTalk } from '../tools/words.ts';
import type { State } from './state.ts';

const press = (page: Page, name: string): Promise<void> => page.getByRole('button', { name, exact: true }).click();

export const fair: readonly State[] = [
  {
    name: 'fair-favour-cone',
    go: async (page) => {
      await openFair(page);
      await page.getByLabel(englishTalk('lab.negative')).check();
      await favour(page, 'Cone');
      await press(page, englishTalk('lab.for-paper', { area: '100 cm²' }));
    },
  },
  {
    name: 'fair-why-not',
    go: async (page) => {
      await openFair(page);
      await favour(page, 'Cube');
    },
  },
  {
    name: 'fair-even-and-riddle',
    go: async (page) => {
      await openFair(page);
      await mostEven(page);
      await page.getByText(englishTalk('lab.table'), { exact: true }).click();
      await page.getByText(englishTalk('lab.minutes'), { exact: true }).click();
      await page.getByText(englishTalk('lab.riddle'), { exact: true }).click();
      await press(page, englishTalk('lab.new-riddle'));
      await press(page, englishTalk('lab.show-rule'));
    },
  },
  {
    name: 'fair-who-won',
    go: async (page) => {
      await openFair(page);
      await page.getByLabel(englishTalk('lab.negative')).check();
      await favour(page, 'Cone');
      await useFirstRule(page);
      await page
        .locator('main')
        .getByRole('button', { name: english('frame.help'), exact: true })
        .click();
    },
  },
];
