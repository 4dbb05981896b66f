// States of the Print screen.

import type { Page } from 'playwright-core';
import { openDemo } from '../tools/classes.ts';
import { english, englishPlan } from '../tools/words.ts';
import type { State } from './state.ts';

export const print: readonly State[] = [
  { name: 'print', go: onPrint },
  {
    name: 'print-masters',
    go: async (page) => {
      await onPrint(page);
      await page.getByRole('button', { name: englishPlan('printing.arrange-masters') }).click();
      await page.getByRole('button', { name: englishPlan('printing.paper-letter') }).click();
      await page.getByRole('button', { name: english('frame.help') }).click();
      await page.getByRole('button', { name: englishPlan('printing.next') }).click();
    },
  },
];

async function onPrint(page: Page): Promise<void> {
  await openDemo(page, 'print');
  await page.locator('img.print-sheet').waitFor();
}
