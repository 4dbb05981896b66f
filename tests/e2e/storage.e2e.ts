// What is kept, what is told when it is not, and that nothing is lost in between.

import { demoClass } from '@cairnmark/demo';
import { encode } from '@cairnmark/formats';
import { expect, it } from 'vitest';
import { inTurn } from '../tools/share.ts';
import { allKept, goTo, onScreen, openDemo, openScreen, openStart, reload, savedClass } from './tools/classes.ts';
import { openApp } from './tools/open-app.ts';
import { KEEPING_NOTHING, roomOf } from './tools/storage.ts';
import { english } from './tools/words.ts';

const DEMO = encode('class', demoClass());

it.each(inTurn(Object.entries(KEEPING_NOTHING), 3, 'browsers'))(
  'a browser that %s: told, and the class can be worked on',
  async (_, before) => {
    const page = await openApp({ before });
    await openDemo(page);
    const told = page.getByRole('alert');
    await told.waitFor();
    expect(await told.textContent()).toBe(english('saved.failed'));
    await openScreen(page, 'board');
    await goTo(page, 'Gannets', 'Harbour Wall');
    expect((await savedClass(page)).text).toBe(DEMO);
  },
);

it('a full device: told, the work goes on, and all of it is kept once there is room', async () => {
  const page = await openApp();
  const giveRoom = await roomOf(page);
  await giveRoom(1);
  await openDemo(page);
  await page.locator('[data-saved="full"]').waitFor();
  expect(await page.getByRole('alert').textContent()).toBe(english('saved.full'));
  await goTo(page, english('frame.new-try'));
  expect((await savedClass(page)).text.length).toBeGreaterThan(DEMO.length);

  await giveRoom(null);
  await goTo(page, english('frame.new-try'));
  await allKept(page);
  const now = (await savedClass(page)).text;
  await reload(page);
  expect((await savedClass(page)).text).toBe(now);
});

it('a class that found no room goes on from the start as it is on the page, with all that is not kept', async () => {
  const page = await openApp();
  await openDemo(page);
  await allKept(page);
  await page.evaluate(() => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('', 'QuotaExceededError');
    };
  });
  await goTo(page, english('frame.new-try'));
  await page.locator('[data-saved="full"]').waitFor();
  const now = (await savedClass(page)).text;
  await openStart(page);
  await page.getByRole('button', { name: english('start.go-on') }).click();
  await onScreen(page, 'build');
  expect((await savedClass(page)).text).toBe(now);
});

it('a class that the browser does not keep is found again from the start while the page is open', async () => {
  const page = await openApp({ before: KEEPING_NOTHING['has no database'] });
  await openDemo(page);
  await goTo(page, 'Gannets', 'Harbour Wall');
  await openStart(page);
  await page.getByText(english('start.open-now-what')).waitFor();
  await page.getByRole('button', { name: english('start.go-on') }).click();
  await onScreen(page, 'build');
  expect(await page.locator('.who-now b').textContent()).toMatch(/^Gannets/);
});
