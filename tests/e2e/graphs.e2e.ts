// The graphs of the Board: they show what the ranking shows, in words and in a table too.

import { expect, it } from 'vitest';
import { openDemo } from './tools/classes.ts';
import { openApp } from './tools/open-app.ts';
import { english, englishTalk } from './tools/words.ts';

it('while places are shown one by one only their groups are drawn, told and listed; pupils see no best possible', async () => {
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
  const numbers = await high.locator('text').allTextContents();
  expect(numbers.filter((text) => /^\d/.test(text))).toEqual(['32', '33', '34', '35', '36', '37', '38']);
  const used = await page
    .getByRole('img', { name: /^Bar graph/ })
    .locator('text')
    .allTextContents();
  expect(used).toContain('5');
  expect(used.filter((text) => text.includes('.'))).toEqual([]);
  // A frozen board is printed as it was.
  const print = page.getByRole('button', { name: englishTalk('graphs.print'), exact: true });
  await press(english('board.freeze'));
  await page.locator('.board-frozen').waitFor();
  expect(await print.count()).toBe(1);
  await press(english('board.unfreeze'));
  await press(english('board.one-by-one'));
  await page.getByText(english('board.not-shown'), { exact: true }).waitFor();
  expect(await page.locator('.graph').count()).toBe(0);
  expect(await print.count(), 'nothing to print yet').toBe(0);
  await press(english('board.next-place'));
  expect(await high.locator('circle').count()).toBe(1);
  expect(await high.getAttribute('aria-label')).toContain('32.0 cm: Petrels.');
  await page
    .getByRole('button', { name: englishTalk('graphs.table'), exact: true })
    .first()
    .click();
  expect(await page.locator('.graph-table').first().locator('tbody tr').allInnerTexts()).toEqual(['Petrels\t32.0 cm']);
  expect(await page.locator('.graphs').innerText()).not.toContain('Puffins');
  // The best possible is the teacher's.
  const best = page.getByRole('button', { name: englishTalk('graphs.front-show'), exact: true });
  await press(english('board.all-places'));
  expect(await best.count()).toBe(1);
  await best.click();
  await page.locator('.graph-front [aria-pressed="true"]').waitFor();
  const front = page.getByRole('img', { name: /Best possible:/ });
  expect(await front.count()).toBe(1);
  await page.getByRole('button', { name: english('frame.settings') }).click();
  await press(english('role.pupil'));
  await page.keyboard.press('Escape');
  expect(await high.locator('circle').count()).toBe(5);
  expect(await best.count()).toBe(0);
  expect(await front.count()).toBe(0);
});
