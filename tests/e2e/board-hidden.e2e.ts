// The Board: what is shown of places while they are hidden or shown one by one.

import { describe, expect, it } from 'vitest';
import { openDemo } from './tools/classes.ts';
import { openApp } from './tools/open-app.ts';
import { english } from './tools/words.ts';

async function boardOfTheDay(hidden: boolean) {
  const page = await openApp();
  await openDemo(page, 'board');
  await page.getByRole('button', { name: english('board.day'), exact: true }).click();
  if (hidden) await page.getByRole('button', { name: english('board.hide-places'), exact: true }).click();
  await page.locator('.day-table tbody tr').first().waitFor();
  return page;
}

describe('the whole day', () => {
  it('shows no points of places while places are hidden, nor who has the most', async () => {
    const page = await boardOfTheDay(true);
    const table = await page.locator('.day-table tbody').innerText();
    expect(table).toContain(english('board.hidden'));
    expect(table).not.toMatch(/\d(?! of \d| results)|most/);
  });

  it('shows them, and who has the most, while they are not', async () => {
    const page = await boardOfTheDay(false);
    expect(await page.locator('.day-table tbody .day-most').count()).toBeGreaterThan(0);
    expect(await page.locator('.day-table tbody').innerText()).not.toContain(english('board.hidden'));
  });
});
