// The Kit screen, as a teacher uses it.

import { demoText } from '@cairnmark/demo';
import type { Locator, Page } from 'playwright-core';
import { openClass, openScreen } from './classes.ts';
import { englishPlan } from './words.ts';

/** From Start: the demo class before anybody has built, on its Kit screen. */
export async function openKit(page: Page): Promise<void> {
  await openClass(page, JSON.stringify({ ...JSON.parse(demoText), attempts: [] }));
  await openScreen(page, 'kit');
  await page.locator('.kit-table').waitFor();
}

/** All that belongs to a kind in the table. */
export const kindRow = (page: Page, kind: string): Locator => page.locator(`[data-kind="${kind}"]`);

export const sizeField = (page: Page, kind: string, size: string): Locator =>
  kindRow(page, kind).locator(`.kit-row [data-size="${size}"] input`);

/** Types into a field and leaves it by Enter. */
export async function typeInto(field: Locator, text: string): Promise<void> {
  await field.fill(text);
  await field.press('Enter');
}

type Fold = 'kit.material' | 'kit.own' | 'kit.print';

export async function unfoldKit(page: Page, ...folds: readonly Fold[]): Promise<void> {
  for (const fold of folds) await page.locator('summary', { hasText: englishPlan(fold) }).click();
}
