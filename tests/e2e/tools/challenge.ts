// The Challenge screen, as a teacher uses it.

import type { PlanKey } from '@cairnmark/words';
import type { Locator, Page } from 'playwright-core';
import { openDemo } from './classes.ts';
import { englishPlan } from './words.ts';

/** From Start: the demo class at Tall Light, or at another challenge. */
export async function openChallenge(page: Page, name?: string): Promise<void> {
  await openDemo(page, 'challenge');
  await page.locator('.chal').waitFor();
  if (name !== undefined) await page.locator('.chal-top').getByRole('button', { name, exact: true }).click();
}

export async function copyChallenge(page: Page): Promise<void> {
  await page.getByRole('button', { name: englishPlan('challenge.copy'), exact: true }).click();
  await page.locator('.chal-name input:focus').waitFor();
}

type Fold = PlanKey extends infer Key ? (Key extends `challenge.${infer Name}` ? Name : never) : never;

/** Opens folds by the ends of their keys: "kit", "places". */
export async function openFolds(page: Page, ...names: readonly Fold[]): Promise<void> {
  for (const name of names) await fold(page, name).locator('summary').click();
}

export const fold = (page: Page, name: Fold): Locator =>
  page
    .locator('.chal-fold')
    .filter({ has: page.getByText(englishPlan(`challenge.${name}` as 'challenge.kit'), { exact: true }) });

/** The row of points or the rule that is called so. */
export const row = (page: Page, name: string): Locator => page.getByRole('group', { name, exact: true });
