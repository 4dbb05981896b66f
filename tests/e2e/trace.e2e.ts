// "Trace it", as a group uses it: two photos of a tower become a build with points, by the mouse and by keys alone.

import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { number, verdict } from './tools/building.ts';
import { allKept, savedClass } from './tools/classes.ts';
import { openApp } from './tools/open-app.ts';
import { choose, clickOn, kindId, openTrace, photo, TRUTH, tapsOf } from './tools/tracing.ts';
import { english, englishTrace } from './tools/words.ts';

const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });

it('two photos become a build with points, and nothing of them leaves the page', async () => {
  const page = await openApp();
  const sent: string[] = [];
  page.on('request', (request) => {
    if (request.method() !== 'GET' || request.postData() !== null) sent.push(request.url());
  });
  await openTrace(page);
  const begun = performance.now();
  await choose(page, photo('top'));
  await page.getByRole('heading', { name: englishTrace('trace.good') }).waitFor();
  for (const [k, piece] of TRUTH.pieces.entries()) {
    await page.locator(`[data-trace-kind="${kindId(k)}"]`).click();
    for (const tap of tapsOf(piece)) await clickOn(page, tap);
    await button(page, englishTrace('trace.it-fits')).waitFor();
    await page.screenshot({ path: `/tmp/traceh${k}.png` });
    await button(page, englishTrace('trace.it-fits')).click();
  }
  await page.screenshot({ path: '/tmp/trace1.png' });
  await button(page, englishTrace('trace.to-side')).click();
  await choose(page, photo('side'));
  await clickOn(page, TRUTH.pieces[2]?.topInSide ?? [0, 0]);
  await page.screenshot({ path: '/tmp/trace2.png' });
  await button(page, englishTrace('trace.use-height')).click();
  await page.screenshot({ path: '/tmp/trace3.png' });
  expect(await verdict(page)).toBe('Steady');
  console.warn('ms', performance.now() - begun);
  await allKept(page);
  await expectTruth(page);
  expect(await number(page, english('read.height'))).toBe('14.5 cm');
  expect(sent).toEqual([]);
});

/** mm. What a photo promises of places and of the height. */
const PLACE_MM = 1;
const HEIGHT_MM = 3;

async function expectTruth(page: Page): Promise<void> {
  const { attempts } = JSON.parse((await savedClass(page)).text);
  const { layout, observed } = attempts.at(-1);
  expect(layout.pieces).toHaveLength(TRUTH.pieces.length);
  for (const [k, { x, y }] of TRUTH.pieces.entries()) {
    const { xMm, yMm } = layout.pieces[k];
    expect(Math.hypot(xMm - x, yMm - y), `piece ${k}`).toBeLessThan(PLACE_MM);
  }
  expect(Math.abs(observed.photoHeightMm - TRUTH.heightMm)).toBeLessThan(HEIGHT_MM);
}
