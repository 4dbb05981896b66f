// The Board of the demo class, as a teacher shows it: places shared, places that are close, tries, and readings behind them.

import type { Locator, Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { addReading, confirm, onCard } from './tools/card.ts';
import { goTo, openDemo, openScreen } from './tools/classes.ts';
import { openApp } from './tools/open-app.ts';
import { english } from './tools/words.ts';

const openBoard = async (...buttons: readonly string[]): Promise<Page> => {
  const page = await openApp();
  await openDemo(page, 'board');
  for (const name of buttons) await page.getByRole('button', { name, exact: true }).click();
  return page;
};

/** The row of a group, by its name at its beginning. */
const row = (page: Page, group: string): Locator =>
  page.locator('tbody tr').filter({ has: page.locator('th').filter({ hasText: new RegExp(`^${group}`) }) });

const places = (page: Page): Promise<string[]> => page.locator('.rank-table tbody .rank-place').allInnerTexts();

it('two groups that tie share a place, and the next place is left out', async () => {
  const page = await openBoard();
  await row(page, 'Terns').waitFor();
  const shared = english('board.shared');
  expect((await places(page)).map((text) => text.replace(/\s+/g, ' ').trim())).toEqual([
    '1',
    `2 ${shared}`,
    `2 ${shared}`,
    '4',
    '5',
    expect.stringMatching(/^–/),
  ]);
});

it('each of two groups that tie gets the full points of the place', async () => {
  const page = await openBoard(english('board.day'));
  // Six groups: 6 points for the first place, 5 for the second, and 5 again; the fourth gets 3.
  const earned = async (group: string): Promise<string[]> =>
    (await row(page, group).innerText()).match(/(?<=\s)\d+(?=\s|$)/g) ?? [];
  await row(page, 'Terns').waitFor();
  expect(await earned('Puffins')).toEqual(['6', '4', '4', '14']);
  expect(await earned('Terns')).toEqual(['5', '6', '3', '14']);
  expect(await earned('Gannets')).toEqual(['5', '5', '5', '15']);
  expect(await earned('Fulmars')).toEqual(['3', '2', '6', '11']);
});

it('neighbours closer than the ruler can tell are marked, and keep their places', async () => {
  const page = await openBoard();
  // 34.9 and 34.7 cm, each read once to 3 mm.
  await row(page, 'Gannets').waitFor();
  const marks = page.locator('.rank-near-long');
  await expect.poll(() => marks.allInnerTexts()).toContainEqual(expect.stringContaining('0.2 cm apart'));
  expect((await places(page)).join(' ')).toMatch(/4/);
  expect(await row(page, 'Fulmars').locator('.rank-place').innerText()).toBe('4');
});

it('the best of two tries counts here, and what the second changed is told on its card', async () => {
  const page = await openBoard();
  await expect.poll(() => row(page, 'Puffins').innerText()).toContain(english('board.best-of', { count: 2 }));
  await page.getByRole('button', { name: english('board.own'), exact: true }).click();
  const own = english('board.own-better', { number: 2, value: '37.9 cm', before: '27.0 cm' });
  await page.getByText(own).first().waitFor();
  await openScreen(page, 'score');
  await onCard(page);
  await page.getByText(english('score-card.what-changed', { number: 1 })).click();
  expect(await page.locator('.card-since').innerText()).toMatch(/27\.0 cm[\s\S]*37\.9 cm/);
});

it('two readings are averaged, and their spread is the measuring error on the card and on the Board', async () => {
  const page = await openApp();
  await openDemo(page);
  await goTo(page, 'Fulmars');
  await openScreen(page, 'score');
  await onCard(page);
  await page.getByText(english('score-card.real'), { exact: true }).click();
  await addReading(page, '35.7');
  // 34.7 and 35.7 cm: 35.2 in the middle, and half their spread is 5 mm.
  const together = page.locator('.card-real').getByText('35.2 cm ± 0.5 cm');
  await together.waitFor();
  await confirm(page, 'Measurer');
  await openScreen(page, 'board');
  await expect.poll(() => row(page, 'Fulmars').innerText()).toContain('35.2 cm');
  expect(await row(page, 'Fulmars').locator('.rank-place').innerText()).toBe('2');
});
