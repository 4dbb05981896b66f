// States of the Kit screen: one that groups have built with, and one that is still being made.

import type { Page } from 'playwright-core';
import { openDemo } from '../tools/classes.ts';
import { openKit, unfoldKit } from '../tools/kit.ts';
import { english, englishPlan } from '../tools/words.ts';
import type { State } from './state.ts';

export const kit: readonly State[] = [
  {
    name: 'kit-built-with',
    go: async (page) => {
      await openDemo(page, 'kit');
      await page.locator('.kit-table').waitFor();
      await page.getByRole('button', { name: english('frame.help'), exact: true }).click();
    },
  },
  { name: 'kit', go: openKit },
  {
    name: 'kit-refused',
    go: async (page) => {
      await openKit(page);
      await typeSize(page, 'sq-frustum', 'topEdge', '7');
      await typeSize(page, 'cone', 'height', '5');
      await typeSize(page, 'cube', 'edge', '6..0');
      await page.locator('[data-kind="sq-pyramid"] .kit-slope').click();
    },
  },
  {
    name: 'kit-folds',
    go: async (page) => {
      await openKit(page);
      await unfoldKit(page, 'kit.material', 'kit.own', 'kit.print');
      await page.getByLabel(englishPlan('kit.print-bar')).fill('97');
      await page.keyboard.press('Enter');
    },
  },
  {
    name: 'kit-add',
    go: async (page) => {
      await openKit(page);
      await page.getByRole('button', { name: englishPlan('kit.add') }).click();
    },
  },
];

async function typeSize(page: Page, kind: string, size: string, text: string): Promise<void> {
  await page.locator(`[data-kind="${kind}"] [data-size="${size}"] input`).fill(text);
  await page.keyboard.press('Enter');
}
