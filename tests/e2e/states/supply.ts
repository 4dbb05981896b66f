// States of the Supply screen.

import type { Page } from 'playwright-core';
import { goTo, openDemo } from '../tools/classes.ts';
import { openSupply } from '../tools/supply-class.ts';
import { english, englishPlan } from '../tools/words.ts';
import type { State } from './state.ts';

const press = (page: Page, name: string): Promise<void> => page.getByRole('button', { name, exact: true }).click();

const add = (page: Page, what: 'lost' | 'penalty'): Promise<void> =>
  press(page, englishPlan('supply-game.add', { what: englishPlan(`supply-game.${what}`) }));

export const supply: readonly State[] = [
  { name: 'supply', go: (page) => openSupply(page) },
  {
    name: 'supply-unfolded',
    go: async (page) => {
      await openSupply(page);
      for (const fold of await page.locator('.supply summary').all()) await fold.click();
      await page.locator('[data-kind="cone"] button').last().click({ force: true });
    },
  },
  {
    name: 'supply-lost',
    go: async (page) => {
      await openSupply(page, { kind: 'stock-empty' });
      await add(page, 'lost');
      await press(page, englishPlan('supply-game.reason-other'));
      await page
        .locator('main')
        .getByRole('button', { name: english('frame.help'), exact: true })
        .click();
    },
  },
  {
    name: 'supply-over',
    go: async (page) => {
      await openSupply(page, { kind: 'turns', turns: 1 });
      await press(page, englishPlan('supply-game.turn-next'));
      await press(page, englishPlan('supply-game.carrier-role'));
      await add(page, 'penalty');
    },
  },
  { name: 'supply-no-game', go: (page) => openSupply(page, null) },
  {
    name: 'supply-built',
    go: async (page) => {
      await openDemo(page, 'supply');
      await goTo(page, 'Terns');
      await page.getByText(englishPlan('supply-game.no-game-built')).waitFor();
    },
  },
];
