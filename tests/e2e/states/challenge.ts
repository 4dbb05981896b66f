// States of the Challenge screen.

import type { Page } from 'playwright-core';
import { copyChallenge, openChallenge, openFolds } from '../tools/challenge.ts';
import { english, englishPlan, englishTalk } from '../tools/words.ts';
import type { State } from './state.ts';

/** A copy of Harbour Wall: it has rows of every kind, and nobody has built under it. */
const wall = async (page: Page): Promise<void> => {
  await openChallenge(page, 'Harbour Wall');
  await copyChallenge(page);
};

export const challenge: readonly State[] = [
  { name: 'challenge', go: (page) => openChallenge(page) },
  {
    name: 'challenge-rules',
    go: async (page) => {
      await wall(page);
      await page.getByRole('button', { name: englishPlan('challenge.add-only-kinds'), exact: true }).click();
      await page.getByLabel(englishPlan('challenge.cap'), { exact: true }).first().fill('6..0');
      await page.keyboard.press('Enter');
      await page.getByLabel(englishPlan('challenge.floor'), { exact: true }).nth(1).fill('5');
      await page.getByLabel(englishPlan('challenge.cap'), { exact: true }).nth(1).fill('2');
      await page.keyboard.press('Enter');
    },
  },
  {
    name: 'challenge-places',
    go: async (page) => {
      await openChallenge(page);
      await copyChallenge(page);
      await openFolds(page, 'kit', 'places', 'ruler', 'counting', 'gaps', 'criteria');
      await page.getByRole('button', { name: englishPlan('challenge.add-key'), exact: true }).click();
      await page.getByRole('button', { name: englishPlan('challenge.add-criterion'), exact: true }).click();
    },
  },
  {
    name: 'challenge-game',
    go: async (page) => {
      await openChallenge(page);
      await copyChallenge(page);
      await openFolds(page, 'own', 'supply', 'grade', 'labels', 'day');
      await page.getByRole('button', { name: englishPlan('challenge.supply-yes'), exact: true }).click();
      await page.getByRole('button', { name: englishPlan('challenge.add-reward'), exact: true }).click();
      await page.getByRole('button', { name: englishPlan('challenge.add-label'), exact: true }).click();
    },
  },
  {
    name: 'challenge-best',
    go: async (page) => {
      await openChallenge(page);
      await openFolds(page, 'best');
      await page.getByRole('button', { name: englishTalk('best.find'), exact: true }).click();
      await page.getByText(englishTalk('best.any')).waitFor();
      await page.getByLabel(englishTalk('best.show')).check();
    },
  },
  {
    name: 'challenge-copied',
    go: async (page) => {
      await openChallenge(page);
      await page.getByRole('button', { name: englishPlan('challenge.copy-with-builds'), exact: true }).click();
      await page
        .locator('main')
        .getByRole('button', { name: english('frame.help'), exact: true })
        .click();
    },
  },
  {
    name: 'challenge-add',
    go: async (page) => {
      await openChallenge(page);
      await page.getByRole('button', { name: englishPlan('challenge.add'), exact: true }).click();
    },
  },
];
