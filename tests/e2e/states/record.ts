// States of the Record sheet.

import type { Page } from 'playwright-core';
import { openDemo } from '../tools/classes.ts';
import { english, englishPlan } from '../tools/words.ts';
import type { State } from './state.ts';

export const record: readonly State[] = [
  {
    name: 'record',
    go: async (page) => {
      await onSheet(page);
      await page.getByRole('button', { name: english('frame.help') }).click();
    },
  },
  {
    name: 'record-pieces',
    go: async (page) => {
      await onSheet(page);
      await page.getByRole('button', { name: `${english('frame.new-try')} Terns` }).click();
      await page.getByRole('button', { name: 'Not counted Terns' }).click();
    },
  },
  {
    name: 'record-marks',
    go: async (page) => {
      await onSheet(page);
      await page.getByRole('button', { name: 'Harbour Wall' }).click();
      await page.getByRole('button', { name: englishPlan('record-sheet.marks'), exact: true }).click();
    },
  },
];

async function onSheet(page: Page): Promise<void> {
  await openDemo(page, 'record');
  await page.getByRole('table').waitFor();
}
