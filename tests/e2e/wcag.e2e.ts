// WCAG 2.2, levels A and AA, criterion by criterion, as far as axe, targets, the sight of the focus and reflow
// (every-state.e2e.ts) do not hold it. One page for all; each test leaves it as it found it.

import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { atRest, settled } from './states/state.ts';
import { onCard } from './tools/card.ts';
import type { Screen } from './tools/classes.ts';
import { openDemo, openScreen } from './tools/classes.ts';
import { tabStops } from './tools/keyboard.ts';
import { overflowing } from './tools/layout.ts';
import { CHROMEBOOK, TABLET } from './tools/open-app.ts';
import { sharedPage } from './tools/shared-page.ts';
import * as seen from './tools/wcag.ts';
import { english, spanish } from './tools/words.ts';

const SCREENS = ['build', 'score', 'board'] as const;
const shared = sharedPage((page) => openDemo(page));

const on = async (screen: Screen): Promise<Page> => {
  const page = shared();
  // Of a dialog that a failed test left open.
  await page.keyboard.press('Escape');
  await openScreen(page, screen);
  if (screen === 'score') await onCard(page);
  await settled(page);
  return page;
};

const realBuild = async (page: Page): Promise<void> => {
  if (!(await page.getByLabel(english('score-card.reading')).isVisible())) {
    await page.getByText(english('score-card.real'), { exact: true }).click();
  }
};

it('1.3.4 Orientation: a tablet is held upright or lying', async () => {
  const page = await on('score');
  for (const size of [TABLET, { width: TABLET.height, height: TABLET.width }]) {
    await page.setViewportSize(size);
    expect(await overflowing(page)).toEqual([]);
  }
  await page.setViewportSize(CHROMEBOOK);
});

it('1.4.1 Use of Color: what is kept or broken, pressed or not, is told without colour', async () => {
  const page = await on('score');
  expect(await seen.rulesWithoutSign(page)).toEqual([]);
  await realBuild(page);
  expect(await seen.pressedByColourAlone(page)).toEqual([]);
});

it('1.4.4 Resize Text: at 200 % no text is cut off', async () => {
  for (const screen of SCREENS) {
    const page = await on(screen);
    const style = await page.addStyleTag({ content: 'html { font-size: 200% !important }' });
    await atRest(page);
    expect.soft(await seen.cutOff(page), screen).toEqual([]);
    await style.evaluate((node) => (node as Element).remove());
  }
});

it('1.4.11 Non-text Contrast: frames of buttons and fields stand out by 3:1, in the light and in the dark', async () => {
  const page = await on('score');
  await realBuild(page);
  for (const colorScheme of ['dark', 'light'] as const) {
    await page.emulateMedia({ colorScheme });
    expect.soft(await seen.faintFrames(page), colorScheme).toEqual([]);
  }
});

it('1.4.12 Text Spacing: with wider lines, letters and words no text is cut off', async () => {
  for (const screen of SCREENS) {
    const page = await on(screen);
    const style = await page.addStyleTag({
      content:
        '* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important } p { margin-bottom: 2em !important }',
    });
    await atRest(page);
    expect.soft(await seen.cutOff(page), screen).toEqual([]);
    await style.evaluate((node) => (node as Element).remove());
  }
});

it('1.4.13 Content on Hover or Focus: nothing is shown only while it is pointed at', async () => {
  for (const screen of SCREENS) expect.soft(await seen.shownOnHover(await on(screen)), screen).toEqual([]);
});

it('2.1.1 Keyboard, 2.1.2 No Keyboard Trap: Tab reaches every control and comes round', async () => {
  for (const screen of ['score', 'board'] as const) {
    const page = await on(screen);
    // tabStops throws where Tab is caught.
    await tabStops(page);
    expect.soft(await seen.notReached(page), screen).toEqual([]);
  }
});

it('2.1.4 Character Key Shortcuts: single letters do nothing outside the list and the drawing', async () => {
  const page = await on('build');
  const before = await page.locator('.list').innerText();
  await page.getByRole('button', { name: english('frame.settings') }).focus();
  for (const key of ['1', 'l', 't', 'Delete']) await page.keyboard.press(key);
  expect(await page.locator('.list').innerText()).toBe(before);
});

it('2.3.3 Animation from Interactions: who asks for less motion gets none', async () => {
  const page = await on('build');
  await page.emulateMedia({ reducedMotion: 'reduce' });
  expect(await seen.moving(page)).toEqual([]);
});

it('2.4.3 Focus Order: Tab goes in the order of reading, and back from a dialog to what opened it', async () => {
  const page = await on('score');
  await tabStops(page);
  expect(await seen.stopsOutOfOrder(page)).toEqual([]);
  await page.getByRole('button', { name: english('frame.change-group') }).click();
  await page.keyboard.press('Escape');
  expect(await page.evaluate(() => document.activeElement?.className)).toContain('who-now');
});

it('2.4.11 Focus Not Obscured: what has the focus is not hidden under anything', async () => {
  for (const screen of SCREENS) expect.soft(await seen.hiddenStops(await on(screen)), screen).toEqual([]);
});

it('2.5.2 Pointer Cancellation: a press that leaves the button does nothing', async () => {
  const page = await on('score');
  const box = await page.getByRole('button', { name: english('score-card.again') }).boundingBox();
  if (box === null) throw new Error('no button to press');
  await page.mouse.move(box.x + 20, box.y + 20);
  await page.mouse.down();
  await page.mouse.move(box.x + 20, box.y + 300);
  await page.mouse.up();
  expect(page.url()).toMatch(/#\/score$/);
});

it('2.5.7 Dragging Movements: a piece is added and moved by taps', async () => {
  const page = await on('build');
  await page.getByRole('button', { name: english('door.lay') }).click();
  const pieces = page.locator('.list [data-piece]');
  const count = await pieces.count();
  await page.locator('.kind[aria-disabled="false"]').first().click();
  await expect.poll(() => pieces.count()).toBe(count + 1);
  const before = await page.locator('.read').innerText();
  const right = page.locator('.pad').getByRole('button', { name: english('tool.right'), exact: true });
  if (!(await right.isVisible())) await pieces.first().click();
  for (let k = 0; k < 4; k += 1) await right.click();
  await expect.poll(() => page.locator('.read').innerText()).not.toBe(before);
  for (let k = 0; k < 5; k += 1) await page.getByRole('button', { name: english('build.undo'), exact: true }).click();
  await expect.poll(() => pieces.count()).toBe(count);
  await page.getByRole('button', { name: english('door.stack') }).click();
});

it('3.1.1 Language of Page: it is the language of the words', async () => {
  const page = await on('board');
  await page.getByRole('button', { name: english('frame.settings') }).click();
  await page.getByRole('button', { name: english('language.es'), exact: true }).click();
  await expect.poll(() => page.evaluate(() => document.documentElement.lang)).toBe('es');
  await page.getByRole('button', { name: spanish('language.en'), exact: true }).click();
  await expect.poll(() => page.evaluate(() => document.documentElement.lang)).toBe('en');
  await page.keyboard.press('Escape');
});

it('3.3.1 Error Identification, 3.3.3 Error Suggestion: what cannot be read is told at its field, with what to do', async () => {
  const page = await on('score');
  await realBuild(page);
  const field = page.getByLabel(english('score-card.reading'));
  await field.fill('6..0');
  await page.keyboard.press('Tab');
  expect(await field.getAttribute('aria-invalid')).toBe('true');
  const told = await seen.described(field);
  expect(told).toContain('6..0');
  expect(told).toContain('Type it like');
  await field.fill('');
  await page.keyboard.press('Tab');
});

it('4.1.3 Status Messages: a new verdict is announced while the focus stays', async () => {
  const page = await on('build');
  const verdict = page.locator('.verdict [aria-live="polite"]').filter({ has: page.locator('h2') });
  const before = await verdict.innerText();
  const kind = page.locator('.kind[aria-disabled="false"]').first();
  await kind.focus();
  await page.keyboard.press('Enter');
  await expect.poll(() => verdict.innerText()).not.toBe(before);
  expect(await kind.evaluate((node) => node === document.activeElement)).toBe(true);
  await page.getByRole('button', { name: english('build.undo'), exact: true }).click();
  await expect.poll(() => verdict.innerText()).toBe(before);
});

it('forced colours: what is pressed is told apart, and the focus is seen', async () => {
  const page = await on('score');
  await realBuild(page);
  await page.emulateMedia({ forcedColors: 'active' });
  expect(await seen.pressedAlike(page)).toEqual([]);
  expect((await tabStops(page)).filter(({ fault }) => fault !== null)).toEqual([]);
  await page.emulateMedia({ forcedColors: 'none' });
});
