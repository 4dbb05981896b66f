// "Our own result first" on the Score card, and what an own result earns.

import { expect, it } from 'vitest';
import { ROOT, readText } from '../tools/files.ts';
import { head, line, onCard, ownResult, unfold } from './tools/card.ts';
import { goTo, openClass, openDemo, openScreen, reload } from './tools/classes.ts';
import { openApp } from './tools/open-app.ts';
import { english } from './tools/words.ts';

/** A class that pays for own results: of Tall Light, the volume (3 points) and the number of pieces (1 point). */
const openPaying = async (...names: readonly string[]) => {
  const page = await openApp();
  await openClass(page, readText(ROOT, 'tests/corpus/every-rule.json'));
  await goTo(page, ...names);
  await openScreen(page, 'score');
  await onCard(page);
  return page;
};

it('an own result is held against ours at once, with a hint where it differs, and one that agrees earns', async () => {
  const page = await openPaying('Fulmars', 'Tall Light');
  await ownResult(page, 'Volume', '700');
  await expect.poll(() => line(page, 'Volume').innerText()).toMatch(/700 cm³[\s\S]*0$/);
  expect(await line(page, 'Volume').locator('.card-differs').innerText()).toContain('Check your working.');
  await ownResult(page, 'Pieces', '5');
  await expect.poll(() => line(page, 'Pieces').innerText()).toMatch(/5 pieces: agrees[\s\S]*1$/);
});

it('where own results earn, ours stay covered until they are entered, and the value, the working and a reload give nothing away', async () => {
  const page = await openPaying('Fulmars', 'Tall Light');
  const volume = line(page, 'Volume');
  const toggle = page.getByRole('button', { name: english('ours-first.switch'), exact: true });
  expect(await toggle.getAttribute('aria-pressed')).toBe('true');
  await page.getByText(english('ours-first.usual')).waitFor();
  await unfold(page, 'Volume');
  expect(await volume.innerText()).toContain(english('ours-first.covered'));
  expect(await volume.innerText()).not.toContain('cm³');
  await reload(page);
  await onCard(page);
  expect(await volume.innerText()).not.toContain('cm³');
  await ownResult(page, 'Volume', '700');
  await expect.poll(() => volume.locator('.card-val').innerText()).toMatch(/\d cm³/);
});

it('a covered value is shown at a wish, and that is told on its line from then on', async () => {
  const page = await openPaying('Fulmars', 'Tall Light');
  const volume = line(page, 'Volume');
  await volume.getByRole('button', { name: english('ours-first.look') }).click();
  await expect.poll(() => volume.innerText()).toMatch(/\d cm³[\s\S]*looked at before ours/);
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Volume');
  await reload(page);
  await onCard(page);
  expect(await volume.innerText()).toMatch(/\d cm³[\s\S]*looked at before ours/);
  expect(await line(page, 'Pieces').innerText()).toContain(english('ours-first.covered'));
});

it('where nothing is paid for, the switch is off until it is tapped, and covers the total with what it is made of', async () => {
  const page = await openApp();
  await openDemo(page);
  await goTo(page, 'Fulmars', 'Harbour Wall');
  await openScreen(page, 'score');
  await onCard(page);
  expect(await head(page)).toContain('54 points');
  const toggle = page.getByRole('button', { name: english('ours-first.switch'), exact: true });
  expect(await toggle.getAttribute('aria-pressed')).toBe('false');
  await toggle.click();
  expect(await head(page)).not.toContain('54');
  expect(await page.locator('.card-lines .card-sum').innerText()).toContain(english('ours-first.total'));
  expect(await line(page, 'Craft').innerText()).toMatch(/\d/);
  // Paper and the Board show what counts, whatever is covered on the screen.
  expect(await page.locator('.print-card').textContent()).toContain('54');
  await openScreen(page, 'board');
  await page.getByRole('button', { name: 'Harbour Wall', exact: true }).click();
  await expect.poll(() => page.locator('.rank-table').innerText()).toContain('54');
});
