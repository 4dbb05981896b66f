// Slips at Build that must do no harm: keys meant for something else, a number typed for another group, a hasty second tap.

import { expect, it } from 'vitest';
import { newTry, tapKinds, through, verdict } from './tools/building.ts';
import { goTo, openDemo } from './tools/classes.ts';
import { openApp } from './tools/open-app.ts';
import { english } from './tools/words.ts';

it('letters meant for a list or a dialog over the build change neither the build nor the view', async () => {
  const page = await openApp();
  await openDemo(page);
  await newTry(page);
  await through(page, 'lay');
  await page.locator('.line-up select').focus();
  await page.keyboard.press('f');
  const corner = page.getByRole('button', { name: english('view.corner') });
  expect(await corner.getAttribute('aria-pressed')).toBe('true');
  await page.getByRole('button', { name: english('build.keys') }).click();
  await page.keyboard.press('1');
  await page.keyboard.press('a');
  await page.keyboard.press('Escape');
  expect(await page.locator('[data-piece]').count()).toBe(0);
  expect(await corner.getAttribute('aria-pressed')).toBe('true');
});

it('a height typed for one group is not there for the next', async () => {
  const page = await openApp();
  await openDemo(page);
  await newTry(page);
  await through(page, 'numbers');
  const height = page.getByLabel(english('numbers.height'), { exact: true });
  await height.fill('45');
  await height.blur();
  await goTo(page, 'Terns', english('frame.new-try'));
  expect(await page.locator('.who-now b').textContent()).toMatch(/^Terns/);
  expect(await height.inputValue()).toBe('');
});

it('a second tap on what mends a build waits for what the first came to', async () => {
  const page = await openApp();
  await openDemo(page);
  await newTry(page);
  await tapKinds(page, 'cube', 'cube', 'cube', 'cube', 'cube', 'cube');
  await verdict(page);
  // The page is drawn anew in between, and the sums cannot be done yet.
  await page.getByRole('button', { name: english('verdict.take-off', { number: 6 }) }).evaluate(async (button) => {
    (button as HTMLButtonElement).click();
    await new Promise((done) => setTimeout(done));
    (button as HTMLButtonElement).click();
  });
  await verdict(page);
  expect(await page.locator('[data-piece]').count()).toBe(5);
});
