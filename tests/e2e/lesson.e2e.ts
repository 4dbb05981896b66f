// The three lessons from an empty browser: a class is made, its kit and its challenge are typed, pieces are earned, builds
// are entered and measured, and the class is ranked, by typing only what a teacher would. The kit is that of the demo class.

import { demoClass } from '@cairnmark/demo';
import type { KindOfPiece } from '@cairnmark/engine';
import { decode } from '@cairnmark/formats';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { tapKinds } from './tools/building.ts';
import { onCard, unfold } from './tools/card.ts';
import { copyChallenge, row } from './tools/challenge.ts';
import { goTo, openScreen, savedClass } from './tools/classes.ts';
import { kindRow, sizeField, typeInto } from './tools/kit.ts';
import { newClass } from './tools/new-class.ts';
import { openApp } from './tools/open-app.ts';
import { english, englishPlan, spanish, spanishPlan } from './tools/words.ts';

const GROUPS = ['Puffins', 'Terns', 'Gannets', 'Fulmars', 'Petrels', 'Eiders'];
const KIT = demoClass().challenges[0]!.kit;

const record = async (page: Page) => {
  const decoded = decode((await savedClass(page)).text, 'class');
  if (!decoded.ok) throw new RangeError(JSON.stringify(decoded.issues));
  return decoded.value.value;
};

it('from an empty browser to a ranked class of six groups', async () => {
  const page = await openApp();
  await newClass(page, { name: 'Skerry, period 3', groups: GROUPS.join('\n'), ownSolids: true });
  await openScreen(page, 'kit');
  for (const kind of KIT.kinds) await addSolid(page, kind);
  const typed = (await record(page)).challenges[0]!.kit.kinds;
  expect(typed.map(({ name, solid, stock }) => ({ name, solid, stock }))).toEqual(
    KIT.kinds.map(({ name, solid, stock }) => ({ name, solid, stock })),
  );

  await openScreen(page, 'supply');
  await page.getByRole('button', { name: englishPlan('supply-game.play-stock-empty') }).click();
  await page.getByRole('button', { name: 'Puffins', exact: true }).click();
  await earnAll(page, 'cube', 12);
  await page.getByText(englishPlan('supply-game.none-left', { kind: 'Cube' })).waitFor();

  await goTo(page, 'Puffins');
  await openScreen(page, 'build');
  await tapKinds(page, 'cube', 'cube', 'cube', 'cube', 'cube');
  await page.getByRole('button', { name: english('build.show') }).click();
  await onCard(page);

  await openScreen(page, 'record');
  await reading(page, 1, 'Puffins', '25');
  // A near tie: the means are 5 mm apart, the readings of each group 10 mm.
  await reading(page, 1, 'Terns', '34');
  await reading(page, 2, 'Terns', '33');
  await reading(page, 1, 'Gannets', '33.5');
  await reading(page, 2, 'Gannets', '32.5');
  await reading(page, 1, 'Fulmars', '41');
  await reading(page, 1, 'Petrels', '19.5');
  for (const group of ['Terns', 'Gannets', 'Fulmars', 'Petrels']) await fiveCubes(page, group);
  await page.getByLabel(englishPlan('record-sheet.state-of', { group: 'Eiders' })).selectOption('absent');
  await page.getByLabel(englishPlan('record-sheet.who')).fill('measurer');
  await page.getByRole('button', { name: englishPlan('record-sheet.seen-all') }).click();
  await page.getByText(englishPlan('class.measured-of', { measured: 6, of: 6 })).waitFor();

  const before = await board(page);
  expect(before.order).toEqual(['Fulmars', 'Terns', 'Gannets', 'Puffins', 'Petrels', 'Eiders']);
  expect(before.text).toContain(english('board.near', { apart: '' }).trim());

  await decideHeight(page, 'Fulmars', '31', 'The top piece was held');
  expect((await board(page)).order[0]).toBe('Terns');
  await takeBack(page, 'Fulmars', 'It stood by itself');
  expect((await board(page)).order).toEqual(before.order);

  // Another rule in two taps: the copy begins without results, and the first Board stays as it was.
  await openScreen(page, 'challenge');
  await copyChallenge(page);
  await row(page, 'Exactly 5 pieces').getByLabel(englishPlan('challenge.comparison')).selectOption('at-most');
  const { challenges, attempts } = await record(page);
  expect(challenges).toHaveLength(2);
  expect(new Set(attempts.map(({ challenge }) => challenge))).toEqual(new Set([challenges[0]!.id]));
  await goTo(page, challenges[0]!.name);
  expect((await board(page)).order).toEqual(before.order);
});

it('the same in inches and in Spanish', async () => {
  const page = await openApp({ locale: 'es-MX' });
  await page.getByRole('link', { name: spanish('start.new-go') }).click();
  await page.getByLabel(spanishPlan('class.groups-list')).fill('Frailecillos\nCharranes');
  await page.getByRole('button', { name: spanish('units.in') }).click();
  await page.getByRole('button', { name: spanishPlan('class.make') }).click();
  await page.getByRole('link', { name: spanish('tab.kit'), exact: true }).click();
  await typeInto(sizeField(page, 'cube', 'edge'), '2 1/4');
  await page.getByRole('link', { name: spanish('tab.record'), exact: true }).click();
  for (const [group, height] of [
    ['Frailecillos', '12 3/4'],
    ['Charranes', '11,25'],
  ] as const) {
    await page.getByLabel(spanishPlan('record-sheet.reading-of', { number: 1, group })).fill(height);
    await page.keyboard.press('Enter');
    await fiveOf(page, group, 'Cubo');
  }
  await page.getByLabel(spanishPlan('record-sheet.who')).fill('docente');
  await page.getByRole('button', { name: spanishPlan('record-sheet.seen-all') }).click();
  const kept = await page.evaluate(() => document.documentElement.lang);
  expect(kept).toBe('es');
  await page.getByRole('link', { name: spanish('tab.board'), exact: true }).click();
  const first = page.locator('.rank-table tbody tr').first();
  await expect.poll(() => first.innerText()).toMatch(/Frailecillos/);
  expect((await first.innerText()).replace(/\s+/g, ' ')).toMatch(/12 3\/4 in/);
});

/** As in the catalogue; then named, measured and counted. */
async function addSolid(page: Page, { name, solid, stock }: KindOfPiece): Promise<void> {
  await page.getByRole('button', { name: englishPlan('kit.add') }).click();
  const catalogue = solid.solid.replace(/-/g, ' ');
  await page
    .getByRole('dialog')
    .getByRole('button', { name: catalogue[0]!.toUpperCase() + catalogue.slice(1), exact: true })
    .click();
  await page.keyboard.press('Control+A');
  await page.keyboard.type(name);
  await page.keyboard.press('Enter');
  const kind = (await page.locator('[data-kind]').last().getAttribute('data-kind'))!;
  for (const [size, value] of Object.entries(solid.sizes)) {
    await typeInto(sizeField(page, kind, size), size === 'sides' ? String(value) : String(value / 10));
  }
  await typeInto(kindRow(page, kind).getByLabel(englishPlan('kit.pieces-of', { kind: name })), String(stock));
}

async function earnAll(page: Page, kind: string, count: number): Promise<void> {
  const more = page.locator(`[data-kind="${kind}"] button`).last();
  // One more than there are: it says so, and takes none.
  for (let times = 0; times <= count; times += 1) await more.click({ force: true });
}

async function reading(page: Page, number: number, group: string, text: string): Promise<void> {
  await page.getByLabel(englishPlan('record-sheet.reading-of', { number, group })).fill(text);
  await page.keyboard.press('Enter');
}

const fiveCubes = (page: Page, group: string): Promise<void> => fiveOf(page, group, 'Cube');

async function fiveOf(page: Page, group: string, kind: string): Promise<void> {
  await page.locator('.sheet-table tbody', { hasText: group }).locator('button[aria-expanded]').click();
  await page.locator('.pieces-row', { hasText: group }).getByLabel(kind, { exact: true }).fill('5');
  await page.keyboard.press('Enter');
}

/** The Board of the challenge at work: the groups from the top, and all that it says. */
async function board(page: Page): Promise<{ order: string[]; text: string }> {
  await openScreen(page, 'board');
  await page
    .locator('.rank-table tbody tr')
    .nth(GROUPS.length - 2)
    .waitFor();
  await page.waitForFunction(() => document.querySelector('[aria-busy="true"]') === null);
  const text = await page.getByRole('main').innerText();
  const order = GROUPS.map((name) => [name, text.indexOf(name)] as const)
    .sort(([, a], [, b]) => a - b)
    .map(([name]) => name);
  return { order, text };
}

async function decideHeight(page: Page, group: string, value: string, why: string): Promise<void> {
  await goTo(page, group);
  await openScreen(page, 'score');
  await onCard(page);
  await unfold(page, 'Height');
  await page.locator('.card-decide summary').first().click();
  const form = page.locator('.card-decide').first();
  await form.getByLabel(english('score-card.decide-value')).fill(value);
  await form.getByLabel(english('score-card.who')).fill('teacher');
  await form.getByLabel(english('score-card.reason')).fill(why);
  await form.getByRole('button', { name: english('score-card.decide-now') }).click();
  await page.locator('.card-by-hand').getByText(why, { exact: false }).waitFor();
  await onCard(page);
}

async function takeBack(page: Page, group: string, why: string): Promise<void> {
  await goTo(page, group);
  await openScreen(page, 'score');
  await onCard(page);
  const hand = page.locator('.card-by-hand');
  await hand.getByRole('button', { name: english('score-card.take-back') }).click();
  await hand.getByLabel(english('score-card.reason')).first().fill(why);
  await hand.getByRole('button', { name: english('score-card.take-back') }).click();
  await hand.getByText(why, { exact: false }).waitFor();
  await onCard(page);
}
