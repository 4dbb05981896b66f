// A class made in the app, as a teacher types it.

import type { Page } from 'playwright-core';
import { english, englishPlan } from './words.ts';

export interface TypedClass {
  readonly name?: string;
  /** As typed into the list. */
  readonly groups: string;
  /** Names of ready challenges to tick besides the first. */
  readonly challenges?: readonly string[];
  readonly ownSolids?: boolean;
}

/** From Start: ends on the screen of the class. */
export async function newClass(page: Page, { name, groups, challenges = [], ownSolids }: TypedClass): Promise<void> {
  await page.getByRole('link', { name: english('start.new-go') }).click();
  if (name !== undefined) await page.getByLabel(englishPlan('class.name')).fill(name);
  await page.getByLabel(englishPlan('class.groups-list')).fill(groups);
  for (const challenge of challenges) await page.getByRole('checkbox', { name: challenge }).check();
  if (ownSolids === true) await page.getByRole('button', { name: englishPlan('class.kit-own') }).click();
  await page.getByRole('button', { name: englishPlan('class.make') }).click();
  await page.getByText(englishPlan('class.measured')).waitFor();
}
