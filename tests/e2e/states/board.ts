// States of the Board: every challenge and the whole day, and what a teacher does with them.

import { demoClass } from '@cairnmark/demo';
import type { Page } from 'playwright-core';
import { openClass, openDemo, openScreen } from '../tools/classes.ts';
import { twelveGroups } from '../tools/twelve-groups.ts';
import { english, englishTalk } from '../tools/words.ts';
import type { State } from './state.ts';

const challenges = demoClass().challenges.map(({ id, name }) => ({ id, name }));

export const board: readonly State[] = [
  ...challenges.map(({ id, name }) => ({ name: `board-${id}`, go: (page: Page) => shown(page, name) })),
  { name: 'board-day', go: (page) => shown(page, english('board.day')) },
  { name: 'board-own', go: (page) => shown(page, english('board.own')) },
  { name: 'board-graphs', go: (page) => graphs(page) },
  {
    name: 'board-graphs-tables',
    go: async (page) => {
      await graphs(page);
      const table = page.getByRole('button', { name: englishTalk('graphs.table'), exact: true });
      while ((await table.count()) > 0) await table.first().click();
    },
  },
  {
    name: 'board-graphs-best',
    go: async (page) => {
      await graphs(page, 'Narrow Rock');
      await page.getByRole('button', { name: englishTalk('graphs.front-show') }).click();
      await page.locator('.graph-front [aria-pressed="true"]').waitFor();
    },
  },
  { name: 'board-graphs-twelve', go: (page) => graphsOf(page, twelveGroups('grades-6-8', 'mm')) },
  { name: 'board-graphs-youngest', go: (page) => graphsOf(page, twelveGroups('grades-2-3', 'quarter-inch')) },
  { name: 'board-hidden', go: (page) => shown(page, english('board.hide-places')) },
  { name: 'board-one-by-one', go: (page) => shown(page, english('board.one-by-one'), english('board.next-place')) },
  { name: 'board-help', go: (page) => shown(page, english('frame.help')) },
  { name: 'board-frozen', go: (page) => shown(page, english('board.freeze')) },
];

/** The Board of the demo class, with these buttons pressed one after another. */
async function shown(page: Page, ...buttons: readonly string[]): Promise<void> {
  await openDemo(page, 'board');
  for (const name of buttons) await page.getByRole('button', { name, exact: true }).click();
}

async function graphs(page: Page, challenge = 'Tall Light'): Promise<void> {
  await shown(page, challenge, english('board.graphs'));
  await page.locator('.graph-drawing svg').first().waitFor();
}

async function graphsOf(page: Page, classFile: string): Promise<void> {
  await openClass(page, classFile);
  await openScreen(page, 'board');
  await page.getByRole('button', { name: english('board.graphs'), exact: true }).click();
  await page.locator('.graph-drawing svg').first().waitFor();
}
