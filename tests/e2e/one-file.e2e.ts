// The app as one file, opened from a stick on a device that never had a network. The watch over the page sees to it that it
// asks for nothing but itself.

import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { beforeAll, expect, it } from 'vitest';
import { buildApp } from './tools/build-app.ts';
import { openClass, openDemo, reload, savedClass } from './tools/classes.ts';
import { openApp } from './tools/open-app.ts';
import { buildsAndScores, judgesFort, opensEveryScreen, speaksSpanish } from './tools/whole-app.ts';

const file = { address: '' };

beforeAll(() => {
  file.address = pathToFileURL(join(buildApp('one-file', 'one-file'), 'cairnmark.html')).href;
});

const fromStick = () => openApp({ address: file.address, neverOnline: true });

it('builds and scores a tower, keeps it through a reload, and gives it out as a file that opens', async () => {
  const page = await fromStick();
  await openDemo(page);
  await buildsAndScores(page);
  const before = await savedClass(page);
  await reload(page);
  expect(page.url()).toBe(`${file.address}#/board`);
  expect((await savedClass(page)).text).toBe(before.text);
  const other = await fromStick();
  await openClass(other, before.text);
  expect((await savedClass(other)).text).toBe(before.text);
});

it('has every screen inside, the large solver and Spanish', async () => {
  const page = await fromStick();
  await openDemo(page);
  await opensEveryScreen(page);
  await judgesFort(page);
  await speaksSpanish(page);
});
