// States of a new class and of the class as a whole.

import type { Page } from 'playwright-core';
import { openDemo } from '../tools/classes.ts';
import { newClass } from '../tools/new-class.ts';
import { english, englishPlan } from '../tools/words.ts';
import type { State } from './state.ts';

export const classPlan: readonly State[] = [
  {
    name: 'class-new',
    go: async (page) => {
      await page.getByRole('link', { name: english('start.new-go') }).click();
      await page.getByLabel(englishPlan('class.groups-list')).fill('Puffins, Terns\nTerns');
    },
  },
  {
    name: 'class-made',
    go: async (page) => {
      await newClass(page, { groups: 'Puffins\nTerns\nGannets' });
      await page.getByRole('button', { name: `${englishPlan('class.take-out')} Terns` }).click();
    },
  },
  { name: 'class-demo', go: (page) => onClass(page) },
  {
    name: 'class-delete',
    go: async (page) => {
      await onClass(page);
      await page.getByRole('button', { name: englishPlan('class.delete') }).click();
    },
  },
];

async function onClass(page: Page): Promise<void> {
  await openDemo(page, 'class');
  await page.getByText(englishPlan('class.measured')).waitFor();
}
