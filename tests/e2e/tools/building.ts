// Building in the app, as a group does it.

import type { Locator, Page } from 'playwright-core';
import { english } from './words.ts';

/** A further try of the group at work, empty. */
export async function newTry(page: Page): Promise<void> {
  await page.getByRole('button', { name: english('frame.change-group') }).click();
  await page
    .getByRole('dialog', { name: english('frame.change-group') })
    .getByRole('button', { name: english('frame.new-try') })
    .click();
  await page.keyboard.press('Escape');
  await page.locator('[data-state="empty"]').waitFor();
}

/** Goes through one of the doors of Build. */
export async function through(page: Page, door: 'numbers' | 'stack' | 'lay' | 'trace'): Promise<void> {
  await page.getByRole('button', { name: english(`door.${door}`) }).click();
}

/** Taps kinds on the shelf, one after another, by their ids. */
export async function tapKinds(page: Page, ...kinds: readonly string[]): Promise<void> {
  for (const kind of kinds) await page.locator(`[data-kind="${kind}"]`).click();
}

/** The row of a piece in the list, counted from 1 at the table. */
export const row = (page: Page, number: number): Locator => page.locator(`[data-piece="${number - 1}"]`);

/** A tool of the picked piece, by its word. */
export const tool = (page: Page, name: string): Locator =>
  page.locator('.pad').getByRole('button', { name, exact: true });

/** What the verdict says once it stands still: its word. */
export async function verdict(page: Page): Promise<string> {
  await page.locator('.verdict[aria-busy="false"]').waitFor();
  return page.locator('.verdict h2').innerText();
}

/** Asks why, and gives what is answered, line by line. */
export async function whyLines(page: Page): Promise<string[]> {
  await verdict(page);
  await page.getByRole('button', { name: english('verdict.show-why') }).click();
  const more = page.locator('.why-figures');
  if ((await more.count()) > 0) await more.locator('summary').click();
  return page.locator('.why > ul > li, .why-figures li').allInnerTexts();
}

/** One of the six numbers under the build, as it is read: "38.0 cm". */
export async function number(page: Page, name: string): Promise<string> {
  await page.locator('.verdict[aria-busy="false"]').waitFor();
  const box = page.locator('.read > div').filter({ has: page.locator('dt', { hasText: new RegExp(`^${name}$`) }) });
  return (await box.locator('dd').innerText()).replace(/\s+/g, ' ').trim();
}
