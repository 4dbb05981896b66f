// The graphs of the Board: they show what the ranking shows, in words and in a table too.

import { expect, it } from 'vitest';
import { openClass, openDemo, openScreen } from './tools/classes.ts';
import { openApp } from './tools/open-app.ts';
import { twelveGroups } from './tools/twelve-groups.ts';
import { english, englishTalk } from './tools/words.ts';

it('while places are shown one by one only the groups that are shown are drawn, told and listed', async () => {
  const page = await openApp();
  await openDemo(page, 'board');
  const press = (name: string) => page.getByRole('button', { name, exact: true }).click();
  await press(english('board.graphs'));
  const high = page.getByRole('img', { name: /^Line plot/ });
  await high.waitFor();
  // A height is told by its text, and each mark of Plot has lost its own label.
  expect(await high.getAttribute('aria-label')).toContain('34.9 cm: Terns and Gannets; 37.9 cm: Puffins');
  expect(await high.locator('[aria-label]').count()).toBe(0);
  expect(await high.locator('circle').count()).toBe(5);
  await press(english('board.one-by-one'));
  await page.getByText(english('board.not-shown'), { exact: true }).waitFor();
  expect(await page.locator('.graph').count()).toBe(0);
  await press(english('board.next-place'));
  expect(await high.locator('circle').count()).toBe(1);
  expect(await high.getAttribute('aria-label')).toContain('32.0 cm: Petrels.');
  await page
    .getByRole('button', { name: englishTalk('graphs.table'), exact: true })
    .first()
    .click();
  expect(await page.locator('.graph-table').first().locator('tbody tr').allInnerTexts()).toEqual(['Petrels\t32.0 cm']);
  expect(await page.locator('.graphs').innerText()).not.toContain('Puffins');
});

it('a class of twelve has a box plot, with the quartiles of either rule', async () => {
  const page = await openApp();
  await openClass(page, twelveGroups('grades-6-8', 'mm'));
  await openScreen(page, 'board');
  await page.getByRole('button', { name: english('board.graphs'), exact: true }).click();
  const box = page.getByRole('img', { name: /^Box plot/ });
  // By hand, of 27.0 29.6 30.5 30.5 31.7 32.5 | 33.6 34.1 34.7 34.9 36.2 37.9 cm.
  const five = 'Least 27.0 cm, lower quartile 30.5 cm, median 33.05 cm, upper quartile 34.8 cm, greatest 37.9 cm.';
  expect(await box.getAttribute('aria-label')).toContain(five);
  await page.getByRole('button', { name: englishTalk('graphs.with-median'), exact: true }).click();
  await page.getByText(englishTalk('graphs.rule-with-median')).waitFor();
  expect(await box.getAttribute('aria-label')).toContain(five);
});
