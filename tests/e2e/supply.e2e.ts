// The Supply screen, as a class uses it: strokes, what else happened, the clock, a game set and played, the way to Build.

import type { SupplyEvent } from '@cairnmark/scoring';
import type { Locator, Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { allKept, openScreen, reload, savedClass } from './tools/classes.ts';
import { openApp } from './tools/open-app.ts';
import { openSupply } from './tools/supply-class.ts';
import { english, englishPlan } from './tools/words.ts';

const button = (page: Page, name: string): Locator => page.getByRole('button', { name, exact: true });
const kind = (page: Page, id: string): Locator => page.locator(`[data-kind="${id}"]`);
const count = (row: Locator): Promise<string> => row.locator('output').innerText();
const more = (row: Locator): Locator => row.locator('button').last();
const fewer = (row: Locator): Locator => row.locator('button').first();

const strokes = async (page: Page): Promise<readonly SupplyEvent[]> =>
  JSON.parse((await savedClass(page)).text).supplies['lamp-run'];

it('one tap is one stroke, up to the stock of the class, and nothing goes below zero or is deleted', async () => {
  const page = await openApp();
  await openSupply(page);
  const cube = kind(page, 'cube');
  // 3 + 4 earned, 1 lost; the Terns have 4 of the 12.
  expect(await count(cube)).toBe('6');
  expect(await cube.innerText()).toContain('Class: 1 left');
  await more(cube).dblclick();
  expect(await count(cube)).toBe('7');
  await page.getByText(englishPlan('supply-game.none-left', { kind: 'Cube' })).waitFor();
  const cylinder = kind(page, 'cylinder');
  await more(cylinder).click({ force: true });
  await cylinder.getByText(englishPlan('supply-game.none-whole', { kind: 'Cylinder' })).waitFor();
  expect(await count(cylinder)).toBe('0');
  const cone = kind(page, 'cone');
  await button(page, 'Terns').click();
  await fewer(cone).dblclick();
  expect(await count(cone)).toBe('4');
  await button(page, 'Puffins').click();
  await more(cone).dblclick();
  expect(await count(cone)).toBe('2');
  await fewer(cone).dblclick();
  await fewer(cone).click({ force: true });
  expect(await count(cone)).toBe('0');
  await button(page, englishPlan('supply-game.round-next')).click();
  await button(page, '3').click();
  await more(kind(page, 'ball')).click();
  // One cube, ball; two cones that were taken back; a stroke of 6 cones taken back and one of 5, then of 4, in its place.
  const all = await strokes(page);
  expect(all).toHaveLength(9 + 1 + 2 + 2 + 1);
  expect(all.at(-1)).toMatchObject({ group: 'puffins', round: 3, carrier: 'carrier 3' });
});

it('what else happened is told by taps, and each can be taken back in sight', async () => {
  const page = await openApp();
  await openSupply(page);
  const points = page.locator('.supply-total');
  // 8 pieces, 48 faces, 2 penalty points.
  expect(await points.innerText()).toMatch(/^54 /);
  await button(page, englishPlan('supply-game.add', { what: englishPlan('supply-game.lost') })).click();
  await button(page, englishPlan('supply-game.reason-is-torn')).click();
  await page.locator('.supply-picks button', { hasText: 'Cuboid' }).click();
  expect(await count(kind(page, 'cuboid'))).toBe('1');
  expect(await points.innerText()).toMatch(/^47 /);
  await button(page, englishPlan('supply-game.add', { what: englishPlan('supply-game.penalty') })).click();
  await page.getByLabel(englishPlan('supply-game.penalty-points')).fill('3');
  await button(page, englishPlan('supply-game.penalty-give')).click();
  expect(await points.innerText()).toMatch(/^44 /);
  await page.getByText(englishPlan('supply-game.strokes', { group: 'Puffins' })).click();
  const list = page.locator('.supply-strokes li');
  expect(await list.first().innerText()).toContain('Penalty of 3 points: started too early');
  await list.nth(0).getByRole('button').press('Enter');
  await list.nth(1).getByRole('button').click();
  expect(await list.nth(1).locator('s').innerText()).toBe('1 × Cuboid lost: torn, round 2');
  expect(await points.innerText()).toMatch(/^54 /);
});

it('the clock runs on over a reload and another screen, and says when the game is over', async () => {
  const page = await openApp();
  await page.clock.install();
  await openSupply(page);
  await button(page, englishPlan('supply-game.start')).click();
  await allKept(page);
  await reload(page);
  await page.locator('.supply').waitFor();
  await button(page, englishPlan('supply-game.pause')).waitFor();
  await openScreen(page, 'board');
  await page.clock.fastForward('05:00');
  await openScreen(page, 'supply');
  await page.getByText(englishPlan('supply-game.over-time')).waitFor();
  // A teacher still adds what was forgotten.
  await more(kind(page, 'ball')).click();
  expect(await count(kind(page, 'ball'))).toBe('1');
  await button(page, englishPlan('supply-game.again')).click();
  await button(page, englishPlan('supply-game.start')).waitFor();
});

it('a teacher sets a game where there is none, and the group builds with what it has', async () => {
  const page = await openApp();
  await openSupply(page, null);
  await button(page, englishPlan('supply-game.play-turns')).click();
  await button(page, englishPlan('supply-game.choose-again')).click();
  await button(page, englishPlan('supply-game.play-stock-empty')).click();
  await more(kind(page, 'cube')).click();
  expect(await strokes(page)).toHaveLength(1);
  await openScreen(page, 'build');
  // Without the rule that only earned pieces count, the class's stock is on the shelf.
  expect(await page.locator('.shelf [data-kind="cube"]').innerText()).toContain('12');
});

it('a group on its own device counts until the end, then builds with what it has earned and nothing else', async () => {
  const page = await openApp();
  await openSupply(page, { kind: 'turns', turns: 1 });
  expect(await page.locator('[data-besides]').count()).toBe(4);
  await page.getByRole('button', { name: english('frame.settings') }).click();
  await button(page, english('role.pupil')).click();
  await page.keyboard.press('Escape');
  expect(await page.locator('[data-besides]').count()).toBe(2);
  await more(kind(page, 'ball')).click();
  await button(page, englishPlan('supply-game.turn-next')).click();
  await button(page, englishPlan('supply-game.turn-back')).click({ force: true });
  await more(kind(page, 'ball')).click({ force: true });
  await kind(page, 'ball').getByText(englishPlan('supply-game.over-pupils')).waitFor();
  expect(await count(kind(page, 'ball'))).toBe('1');
  await page.getByRole('link', { name: englishPlan('supply-game.to-build') }).click();
  const shelf = (id: string): Promise<string> => page.locator(`.shelf [data-kind="${id}"]`).innerText();
  await page.locator('.shelf [data-kind="cube"]').waitFor();
  expect(await shelf('cube')).toMatch(/\b6\b/);
  expect(await shelf('ball')).toMatch(/\b1\b/);
  expect(await shelf('cone')).toContain(english('build.not-earned'));
});
