// The app as one file, opened from a stick on a device that never had a network. The watch over the page sees to it that it
// asks for nothing but itself.

import { execFile } from 'node:child_process';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { promisify } from 'node:util';
import { decode } from '@cairnmark/formats';
import { beforeAll, expect, it } from 'vitest';
import { ROOT } from '../tools/files.ts';
import { openDemo, reload, savedClass } from './tools/classes.ts';
import { openApp } from './tools/open-app.ts';
import { buildsAndScores, judgesFort, opensEveryScreen, speaksSpanish } from './tools/whole-app.ts';

/** What `npm run build` makes, put elsewhere, and what it says. */
const made = { said: '', address: '' };

/** Two builds on a machine that does much else besides, ms. */
const BUILDS_MS = 300_000;

// Not in one piece: whoever runs the tests gives up a file that does not answer for a minute.
beforeAll(async () => {
  const folder = '.cache/web-ways';
  const words = { cwd: ROOT, env: { ...process.env, NO_COLOR: '1' } };
  const { stdout, stderr } = await promisify(execFile)(process.execPath, ['apps/web/build.mjs', folder], words);
  made.said = `${stdout}${stderr}`;
  made.address = pathToFileURL(join(ROOT, folder, 'cairnmark.html')).href;
}, BUILDS_MS);

const fromStick = () => openApp({ address: made.address, neverOnline: true });

it('is built together with the folder for a web host, and it is said where both are and how large', () => {
  expect(made.said.replaceAll('\\', '/').split('\n')).toEqual([
    expect.stringMatching(/^\.cache\/web-ways\/web +\d\.\d MB {2}a folder for any web host$/),
    expect.stringMatching(/^\.cache\/web-ways\/cairnmark\.html +\d\.\d MB {2}one file, for a USB stick$/),
    '',
  ]);
});

it('builds and scores a tower, keeps it through a reload, and gives it out as a file', async () => {
  const page = await fromStick();
  await openDemo(page);
  await buildsAndScores(page);
  const before = await savedClass(page);
  await reload(page);
  expect(page.url()).toBe(`${made.address}#/board`);
  expect((await savedClass(page)).text).toBe(before.text);
  expect(decode(before.text, 'class').ok).toBe(true);
});

it('has every screen inside, the large solver and Spanish', async () => {
  const page = await fromStick();
  await openDemo(page, 'class');
  await opensEveryScreen(page);
  await judgesFort(page);
  await speaksSpanish(page);
});
