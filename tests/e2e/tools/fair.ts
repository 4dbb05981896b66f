// Fair points, as a teacher uses it.

import type { Page } from 'playwright-core';
import { openDemo } from './classes.ts';
import { englishTalk } from './words.ts';

/** Fair points of the demo class, at Tall Light. */
export async function openFair(page: Page): Promise<void> {
  await openDemo(page, 'fair');
  await page.locator('.fair-bars').waitFor();
}

/** Asks for points that favour a solid, and waits for the answer. */
export async function favour(page: Page, solid: string): Promise<void> {
  await page.getByLabel(englishTalk('lab.which')).selectOption({ label: solid });
  await page.getByRole('button', { name: englishTalk('lab.search') }).click();
  await answered(page);
}

export async function mostEven(page: Page): Promise<void> {
  await page.getByLabel(englishTalk('lab.most-even')).check();
  await page.getByRole('button', { name: englishTalk('lab.search') }).click();
  await answered(page);
}

/** Puts the first rule that was found into the bars, and asks who would have won by it. */
export async function useFirstRule(page: Page): Promise<void> {
  await page
    .getByRole('button', { name: englishTalk('lab.try'), exact: true })
    .first()
    .click();
  await page.getByRole('button', { name: englishTalk('lab.use'), exact: true }).click();
  await page.locator('.fair-ranked').waitFor();
}

const answered = (page: Page): Promise<void> => page.locator('.fair-result > :is(.note, .warnbox)').waitFor();
