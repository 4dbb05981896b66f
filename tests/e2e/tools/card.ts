// The Score card, as a group and its teacher use it.

import type { Locator, Page } from 'playwright-core';
import { english } from './words.ts';

/** Waits until the card and the places of the class are worked out. */
export async function onCard(page: Page): Promise<void> {
  await page.locator('.card[aria-busy="false"]').waitFor();
  await page.locator('.card-tries[aria-busy="false"]').waitFor();
}

/** The line of a measure, by its name. */
export const line = (page: Page, measure: string): Locator =>
  page.locator('.card-line').filter({ has: page.getByRole('button', { name: measure, exact: true }) });

export async function unfold(page: Page, ...measures: readonly string[]): Promise<void> {
  for (const measure of measures) await page.getByRole('button', { name: measure, exact: true }).click();
}

/** Types what a group worked out itself. */
export async function ownResult(page: Page, measure: string, text: string): Promise<void> {
  await line(page, measure)
    .getByRole('button', { name: english('score-card.enter-own') })
    .click();
  await line(page, measure).getByRole('textbox').waitFor();
  await page.keyboard.type(text);
  await page.keyboard.press('Enter');
  await onCard(page);
}

export async function addReading(page: Page, text: string): Promise<void> {
  await page.getByLabel(english('score-card.reading')).fill(text);
  await page.keyboard.press('Enter');
  await onCard(page);
}

/** Says who looked at the real build. */
export async function confirm(page: Page, who: string): Promise<void> {
  await page.locator('.card-real').getByLabel(english('score-card.who')).fill(who);
  await page.getByRole('button', { name: english('score-card.seen'), exact: true }).click();
  await onCard(page);
}

/** What stands at the top: group, total, place, whether it was seen. */
export const head = async (page: Page): Promise<string> =>
  (await page.locator('.card-head').innerText()).replace(/\s+/g, ' ');
