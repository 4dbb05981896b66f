// The frame round every screen: by keys alone, by touch, without network, and what its dialogs do.

import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { settled } from './states/state.ts';
import { allKept, goTo, openDemo, openScreen, savedClass } from './tools/classes.ts';
import { pressOn, tabStops, tabTo } from './tools/keyboard.ts';
import { NARROW, openApp, TABLET } from './tools/open-app.ts';
import { english } from './tools/words.ts';

it('Tab goes through Start in the order of reading, and the focus is seen at each stop', async () => {
  const page = await openApp();
  expect(await tabStops(page)).toEqual(
    [
      `button ${english('frame.skip')}`,
      `link ${english('frame.brand')}`,
      `button ${english('frame.settings')}`,
      `button ${english('start.first-go')}`,
      `button ${english('start.demo-open')}`,
      `link ${english('start.new-go')}`,
      `input ${english('start.file-choose')}`,
    ].map((name) => ({ name, fault: null })),
  );
});

it('by keys alone: the demo, another group, the Board, and on by skipping the tabs', async () => {
  const page = await openApp();
  await pressOn(page, `button ${english('start.demo-open')}`);
  await page.locator('.who-now').waitFor();
  await tabTo(page, `button Puffins, try 2${english('frame.change-group')}`);
  await page.keyboard.press('Enter');
  await pressOn(page, 'button Gannets', 'Space');
  await page.keyboard.press('Escape');
  const opener = await page.evaluate(() => document.activeElement?.textContent);
  expect(opener).toMatch(/^Gannets, try \d/);
  await tabTo(page, `link ${english('tab.board')}`, 'Shift+Tab');
  await page.keyboard.press('Enter');
  await page.waitForURL('**/#/board');
  await tabTo(page, `button ${english('frame.skip')}`, 'Shift+Tab');
  await page.keyboard.press('Enter');
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('content');
  expect(page.url()).toMatch(/#\/board$/);
});

it('a screen that does not arrive is told, can be asked for again, and nothing is lost', async () => {
  const page = await openApp({ provokes: /ERR_FAILED/ });
  await page.route(/build-[\w-]+\.js$/, (route) => route.abort());
  await page.getByRole('button', { name: english('start.demo-open') }).click();
  await page.getByRole('alert').waitFor();
  expect(await page.getByRole('alert').innerText()).toContain(english('frame.not-here-what'));
  await page.unroute(/build-[\w-]+\.js$/);
  await page.getByRole('button', { name: english('frame.again') }).click();
  await page.locator('.drawing').waitFor();
});

it('once a class is open, every screen is there without the network', async () => {
  // The large solver has not been needed yet: what it would have said is told as not worked out.
  const page = await openApp({ provokes: /highs-/ });
  await openDemo(page);
  await screensFetched(page);
  await page.context().setOffline(true);
  await openScreen(page, 'score');
  await openScreen(page, 'board');
  await expect.poll(() => page.getByRole('main').innerText()).toMatch(/Terns/);
  // Its words are a file of their own.
  await openScreen(page, 'class');
});

it('a file is chosen by keys alone', async () => {
  const page = await openApp();
  await tabTo(page, `input ${english('start.file-choose')}`);
  const choosing = page.waitForEvent('filechooser');
  await page.keyboard.press('Space');
  await (await choosing).setFiles([]);
});

it('an open dialog holds the focus until Escape, and says what it is', async () => {
  const page = await openApp();
  await pressOn(page, `button ${english('frame.settings')}`);
  const dialog = page.getByRole('dialog', { name: english('frame.settings') });
  await dialog.waitFor();
  const outside = (await tabStops(page))
    .map(({ name }) => name)
    .filter((name) => name.includes(english('start.demo-open')));
  expect(outside).toEqual([]);
  await page.keyboard.press('Escape');
  await dialog.waitFor({ state: 'hidden' });
});

it.each([
  ['a tablet', TABLET],
  ['a narrow window', NARROW],
])('by touch alone on %s: the demo, another challenge, the Score card', async (_, viewport) => {
  const page = await openApp({ viewport, touch: true });
  await page.getByRole('button', { name: english('start.demo-open') }).tap();
  await page.getByRole('button', { name: english('frame.change-group') }).tap();
  await page.getByRole('button', { name: 'Narrow Rock' }).tap();
  await page
    .getByRole('button', { name: english('frame.close') })
    .first()
    .tap();
  await page.getByRole('link', { name: english('tab.score') }).tap();
  await page.waitForURL('**/#/score');
});

it('without network the class is worked on and kept, once its screens have been seen', async () => {
  const page = await openApp();
  await openDemo(page);
  await openScreen(page, 'board');
  await settled(page);
  await page.context().setOffline(true);
  await openScreen(page, 'build');
  await goTo(page, 'Terns', english('frame.new-try'));
  await allKept(page);
  expect((await savedClass(page)).text).toContain('"tall-light-terns-');
});

/**
 * Waits until the screens that are fetched ahead are here. A page without requests may still be about to make them, so
 * the load state of the browser is no sign of it.
 */
async function screensFetched(page: Page): Promise<void> {
  const fetched = (): Promise<string[]> =>
    page.evaluate(() => performance.getEntriesByType('resource').map(({ name }) => name));
  for (const screen of ['score-card', 'board']) {
    for (const kind of ['js', 'css']) {
      await expect.poll(fetched).toContainEqual(expect.stringMatching(new RegExp(`/${screen}-[\\w-]+\\.${kind}$`)));
    }
  }
  // What they import in turn has been asked for together with them.
  await page.waitForLoadState('networkidle');
}
