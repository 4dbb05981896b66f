// States of the Score card.

import type { Page } from 'playwright-core';
import { addReading, onCard, ownResult, unfold } from '../tools/card.ts';
import { goTo, openDemo, openScreen } from '../tools/classes.ts';
import { english } from '../tools/words.ts';
import type { State } from './state.ts';

const card = async (page: Page, ...names: readonly string[]): Promise<void> => {
  await openDemo(page);
  if (names.length > 0) await goTo(page, ...names);
  await openScreen(page, 'score');
  await onCard(page);
};

export const scoreCard: readonly State[] = [
  { name: 'score-card', go: (page) => card(page) },
  {
    name: 'score-card-worked-out',
    go: async (page) => {
      await card(page, 'Petrels');
      await unfold(page, 'Height', 'Volume');
      await ownResult(page, 'Volume', '520');
    },
  },
  {
    name: 'score-card-provisional',
    go: async (page) => {
      await card(page);
      await page.getByText(english('score-card.real'), { exact: true }).click();
      await addReading(page, '38.1');
    },
  },
  {
    name: 'score-card-covered',
    go: async (page) => {
      await card(page, 'Fulmars', 'Harbour Wall');
      await page.getByRole('button', { name: english('ours-first.switch'), exact: true }).click();
      await page
        .getByRole('button', { name: english('ours-first.look') })
        .first()
        .click();
    },
  },
  {
    name: 'score-card-help',
    go: async (page) => {
      await card(page, 'Fulmars', 'Harbour Wall');
      await page
        .locator('main')
        .getByRole('button', { name: english('frame.help'), exact: true })
        .click();
    },
  },
  { name: 'score-card-judged', go: (page) => card(page, 'Fulmars', 'Harbour Wall') },
  { name: 'score-card-fell', go: (page) => card(page, 'Eiders') },
  {
    name: 'score-card-absent',
    go: async (page) => {
      await openDemo(page);
      await goTo(page, 'Petrels', 'Harbour Wall');
      await openScreen(page, 'score');
      await page.getByText(english('score-card.absent-what')).first().waitFor();
    },
  },
  {
    name: 'score-card-unread',
    go: async (page) => {
      await card(page);
      await page.getByText(english('score-card.real'), { exact: true }).click();
      await page.getByLabel(english('score-card.seconds')).fill('6..0');
      await page.keyboard.press('Tab');
      await page.getByLabel(english('score-card.reading')).fill('1,250');
      await page.keyboard.press('Enter');
    },
  },
];
