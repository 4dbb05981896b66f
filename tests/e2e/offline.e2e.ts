// Opened once, the app is on the device: it starts and goes on when its host is gone, and a newer version on the host never
// takes anything from a page that is open.

import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect, inject, it, onTestFinished } from 'vitest';
import { ROOT } from '../tools/files.ts';
import { allKept, openDemo, reload } from './tools/classes.ts';
import { putNewer } from './tools/newer-version.ts';
import { newPage, openApp } from './tools/open-app.ts';
import { serveFolder } from './tools/serve-folder.ts';
import { judgesFort, opensEveryScreen, speaksSpanish } from './tools/whole-app.ts';

it('without its host all of it goes on: every screen, the large solver, Spanish', async () => {
  const site = await serveFolder(inject('builtFolder'));
  const page = await openApp({ address: site.address, keeps: true });
  await isKept(page);
  await site.close();
  await reload(page);
  await openDemo(page, 'class');
  await opensEveryScreen(page);
  await judgesFort(page);
  await speaksSpanish(page);
  const byName = await newPage(page.context(), site.address);
  await byName.goto(`${site.address}index.html`);
  await byName.locator('h1').first().waitFor();
});

it('a page goes on with the version it began with; the newer one comes once no other page is open', async () => {
  const folder = join(ROOT, '.cache/web-offline');
  putNewer(inject('builtFolder'), folder, 'A');
  const site = await serveFolder(folder);
  onTestFinished(() => site.close());
  const page = await openApp({ address: site.address, keeps: true });
  await isKept(page);
  await openDemo(page);
  await allKept(page);
  putNewer(inject('builtFolder'), folder, 'B');
  await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
  await expect.poll(() => workers(page)).toEqual({ active: true, waiting: true });

  // Spanish was not asked for before, and the host has it under another name now.
  await speaksSpanish(page);
  const other = await newPage(page.context(), site.address);
  await other.goto(site.address);
  await other.locator('h1').first().waitFor();
  expect(await version(other)).toBe('A');
  expect(await workers(page)).toEqual({ active: true, waiting: true });
  await other.close();

  await expect.poll(() => reloaded(page)).toBe('B');
  expect(await page.evaluate(async () => (await caches.keys()).length), 'what is kept of the old one').toBe(1);
  expect(await workers(page)).toEqual({ active: true, waiting: false });
});

it('what else a host holds beside the app is its own', async () => {
  const site = await serveFolder(inject('builtFolder'), {
    '/other.html': OTHER.replace('NAME', 'Other'),
    '/deep/index.html': OTHER.replace('NAME', 'Deep'),
  });
  onTestFinished(() => site.close());
  const page = await openApp({ address: site.address, keeps: true });
  await isKept(page);
  await page.goto(`${site.address}other.html`);
  expect(await page.locator('h1').innerText()).toBe('Other');
  await page.goto(`${site.address}deep/`);
  expect(await page.locator('h1').innerText()).toBe('Deep');
});

/** Without an icon of its own a browser asks the host for one. */
const OTHER = '<link rel="icon" href="data:,"><h1>NAME</h1>';

/** Waits until the whole app is on the device, and the page is answered from there. */
async function isKept(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller?.state)).toBe('activated');
}

/** The version after a reload; the page may load itself once more. A device under load may need a second one. */
async function reloaded(page: Page): Promise<string | undefined> {
  await page.reload();
  await page.locator('h1').first().waitFor();
  return version(page);
}

const version = (page: Page): Promise<string | undefined> =>
  page.evaluate(() => document.documentElement.dataset['version']);

const workers = (page: Page): Promise<{ active: boolean; waiting: boolean }> =>
  page.evaluate(async () => {
    const ours = await navigator.serviceWorker.getRegistration();
    return { active: ours?.active?.state === 'activated', waiting: ours?.waiting?.state === 'installed' };
  });
