// What is kept, what is told when it is not, and that nothing is lost in between.

import { demoClass } from '@cairnmark/demo';
import { encode } from '@cairnmark/formats';
import { expect, it } from 'vitest';
import { allKept, goTo, openDemo, openScreen, reload, savedClass } from './tools/classes.ts';
import { openApp } from './tools/open-app.ts';
import { KEEPING_NOTHING, roomOf } from './tools/storage.ts';
import { english } from './tools/words.ts';

const DEMO = encode('class', demoClass());

it.each(Object.entries(KEEPING_NOTHING))(
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
