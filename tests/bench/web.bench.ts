// How soon the web app is ready, against an empty page of the same site in the same run, in turns: a headless Chromium
// held back to a quarter of its speed, nothing in its cache. Ready: the heading is drawn and a tap is answered. And how long
// each move of a dragged piece takes over a build of thirty, at full speed; here the scene is drawn in software, so the
// longest task says more of this machine than of a tablet with its own chip for drawing.

import type { Browser } from 'playwright-core';
import { chromium } from 'playwright-core';
import { buildApp } from '../e2e/tools/build-app.ts';
import { howToLaunch } from '../e2e/tools/chromium.ts';
import { openClass } from '../e2e/tools/classes.ts';
import type { MoveTimes } from '../e2e/tools/move-times.ts';
import { dragOverBuild, noteMoves, wallClass } from '../e2e/tools/move-times.ts';
import { serveFolder } from '../e2e/tools/serve-folder.ts';
import type { Report } from './measure.ts';
import { median } from './measure.ts';

export const name = 'the web app';

const SLOWER = 4;
const ROUNDS = 9;
const EMPTY = '<!doctype html><meta charset="utf-8"><title>Empty</title><h1>Empty</h1>';

export async function run(report: Report): Promise<void> {
  const site = await serveFolder(buildApp('bench'), { '/empty.html': EMPTY });
  const browser = await chromium.launch(howToLaunch('smooth'));
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
    const { handlersMs, longestTaskMs } = await dragged(browser, site.address);
    report({ label: 'a move of the pointer over 30 pieces', value: median(handlersMs), unit: 'ms', target: '8' });
    report({ label: 'the slowest of 100 moves', value: Math.max(...handlersMs), unit: 'ms' });
    report({ label: 'longest task while dragging (0: below 50)', value: longestTaskMs, unit: 'ms' });
  } finally {
    await browser.close();
    await site.close();
  }
}

async function dragged(browser: Browser, address: string): Promise<MoveTimes> {
  const context = await browser.newContext({ viewport: { width: 1366, height: 768 }, serviceWorkers: 'block' });
  try {
    const page = await context.newPage();
    await page.addInitScript(noteMoves);
    await page.goto(address);
    await openClass(page, wallClass(30));
    return await dragOverBuild(page, 100);
  } finally {
    await context.close();
  }
}

/** From asking for the page until its heading is drawn and the page is free to answer, ms. */
async function readyMs(browser: Browser, address: string): Promise<number> {
  const context = await browser.newContext({ viewport: { width: 1366, height: 768 }, serviceWorkers: 'block' });
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
