// How soon the web app is ready, against an empty page of the same site in the same run, in turns: a headless Chromium
// held back to a quarter of its speed, nothing in its cache. Ready: the heading is drawn and a tap is answered.

import type { Browser } from 'playwright-core';
import { chromium } from 'playwright-core';
import { buildApp } from '../e2e/tools/build-app.ts';
import { howToLaunch } from '../e2e/tools/chromium.ts';
import { serveFolder } from '../e2e/tools/serve-folder.ts';
import type { Report } from './measure.ts';
import { median } from './measure.ts';

export const name = 'the web app';

const SLOWER = 4;
const ROUNDS = 9;
const EMPTY = '<!doctype html><meta charset="utf-8"><title>Empty</title><h1>Empty</h1>';

export async function run(report: Report): Promise<void> {
  const site = await serveFolder(buildApp('bench'), { '/empty.html': EMPTY });
  const browser = await chromium.launch(howToLaunch());
  try {
    const pages = { empty: `${site.address}empty.html`, app: site.address };
    const times = { empty: [] as number[], app: [] as number[] };
    for (let round = 0; round < ROUNDS; round += 1) {
      for (const page of ['empty', 'app'] as const) times[page].push(await readyMs(browser, pages[page]));
    }
    const [empty, app] = [median(times.empty), median(times.app)];
    report({ label: `empty page ready, ${SLOWER} times slower`, value: empty, unit: 'ms' });
    report({ label: 'Start ready, against the empty page', value: app / empty, unit: 'x' });
    report({ label: 'Start ready, more than the empty page', value: app - empty, unit: 'ms' });
  } finally {
    await browser.close();
    await site.close();
  }
}

/** From asking for the page until its heading is drawn and the page is free to answer, ms. */
async function readyMs(browser: Browser, address: string): Promise<number> {
  const context = await browser.newContext({ viewport: { width: 1366, height: 768 } });
  try {
    const page = await context.newPage();
    const session = await context.newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
    await page.addInitScript(noteReady);
    await page.goto(address);
    await page.waitForFunction(() => 'readyMs' in window);
    return await page.evaluate(() => Number(Reflect.get(window, 'readyMs')));
  } finally {
    await context.close();
  }
}

/** Runs in the page, before anything of its own. */
function noteReady(): void {
  const look = (): void => {
    if (document.querySelector('h1') === null) requestAnimationFrame(look);
    else requestAnimationFrame(() => setTimeout(() => Reflect.set(window, 'readyMs', performance.now())));
  };
  requestAnimationFrame(look);
}
