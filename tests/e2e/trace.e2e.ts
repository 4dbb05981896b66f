// "Trace it", as a group uses it: two photos of a tower become a build with points, by the mouse and by keys alone; what is no
// photo to measure by is told with what to do about it.

import { readFileSync } from 'node:fs';
import { signedAreaMm2 } from '@cairnmark/geometry';
import type { Locator, Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { number, through, verdict } from './tools/building.ts';
import { onCard } from './tools/card.ts';
import { allKept, savedClass } from './tools/classes.ts';
import { tabTo } from './tools/keyboard.ts';
import { NARROW, openApp, TABLET } from './tools/open-app.ts';
import { blurred, damaged, HEIC, HUGE, onItsSide, plain, TEXT } from './tools/photo-files.ts';
import { choose, clickOn, keyTo, kindId, openTrace, photo, TRUTH, tapsOf, traceAbove } from './tools/tracing.ts';
import { english, englishTrace } from './tools/words.ts';

const TOP = TRUTH.pieces[2]?.topInSide ?? [0, 0];

it('two photos become a build with points by the mouse, and nothing of them leaves the page', async () => {
  const page = await openApp();
  const sent: string[] = [];
  page.on('request', (request) => {
    if (request.method() !== 'GET' || request.postData() !== null) sent.push(request.url());
  });
  await openTrace(page);
  await traceAbove(page);
  await choose(page, photo('side'));
  await clickOn(page, TOP);
  await page.getByText(englishTrace('trace.same', { stacked: '14.4 cm' })).waitFor();
  await page.getByRole('button', { name: englishTrace('trace.use-height') }).click();
  expect(await verdict(page)).toBe('Steady');
  // A point a whole centimetre.
  expect(await page.locator('.go .points b').innerText()).toBe('14');
  await expectTruth(page, TRUTH.pieces.length);
  expect(sent).toEqual([]);
  // What was traced is one step back, and the photos are gone once they are deleted.
  await page.getByRole('button', { name: english('build.undo') }).click();
  await expect.poll(() => page.locator('[data-piece]').count()).toBe(0);
  await allKept(page);
  expect(JSON.parse((await savedClass(page)).text).attempts.at(-1).observed.photoHeightMm).toBeUndefined();
  await through(page, 'trace');
  await page.getByRole('button', { name: englishTrace('trace.delete') }).click();
  expect(await page.locator('.trace-photo canvas').count()).toBe(0);
});

it('a shape that is not on the list is traced round its edge, and what no photo shows is not measured', async () => {
  const page = await openApp();
  await openTrace(page);
  await traceAbove(page, 3);
  await page.getByRole('button', { name: englishTrace('trace.above'), exact: true }).click();
  const { outlineInTop = [], outline = [], z, dims } = TRUTH.pieces[3]!;
  await page.getByRole('button', { name: englishTrace('trace.shape') }).click();
  for (const corner of outlineInTop) await clickOn(page, corner);
  // The corners wait for the height of their edge: that of its top.
  const edgeMm = outline[0]?.[2] ?? Number.NaN;
  expect(edgeMm).toBe(z + (dims['height'] ?? Number.NaN));
  await page.getByLabel(englishTrace('trace.shape-plane')).fill((edgeMm / 10).toFixed(2));
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: englishTrace('trace.close') }).click();
  await page.getByLabel(englishTrace('trace.shape-kind')).selectOption({ label: 'hexagonal prism 4' });
  // With the longest steps of all: they scroll, and the page does not.
  expect(await page.evaluate(() => document.documentElement.scrollHeight - innerHeight)).toBe(0);
  await page.getByRole('button', { name: englishTrace('trace.it-fits'), exact: true }).click();
  await page.getByRole('button', { name: englishTrace('trace.to-side') }).click();
  await choose(page, photo('side'));
  await clickOn(page, TOP);
  await page.getByRole('button', { name: englishTrace('trace.use-height') }).click();
  await onCard(page);
  await allKept(page);
  const { layout, observed } = JSON.parse((await savedClass(page)).text).attempts.at(-1);
  expect(layout.kind).toBe('traced');
  expect(layout.pieces).toEqual(TRUTH.pieces.map((_, k) => kindId(k)));
  const traced = Math.abs(signedAreaMm2(layout.outlines[3].outline.points));
  const real = Math.abs(signedAreaMm2(outline.map(([x, y]) => [x, y] as const)));
  // What a photo promises of a free outline.
  expect(Math.abs(traced / real - 1)).toBeLessThan(0.05);
  expect(Math.abs(observed.photoHeightMm - TRUTH.heightMm)).toBeLessThan(HEIGHT_MM);
  // Back at Build its outlines are seen from above.
  await page.getByRole('link', { name: english('tab.build'), exact: true }).click();
  await page.getByRole('img', { name: englishTrace('trace.drawn') }).waitFor();
  // On a tablet too.
  await page.setViewportSize(TABLET);
  await page.getByRole('img', { name: englishTrace('trace.drawn') }).waitFor();
});

it('the same by keys alone', async () => {
  const page = await openApp();
  await openTrace(page);
  await choose(page, photo('top'));
  // The tower alone: the piece beside it shows nothing new.
  for (const [k, piece] of TRUTH.pieces.slice(0, 3).entries()) {
    await pressTab(page, page.locator(`[data-trace-kind="${kindId(k)}"]`));
    await tabTo(page, `application ${englishTrace('trace.photo-above')}`, 'Shift+Tab');
    let cross = await crossAt(page);
    for (const tap of tapsOf(piece)) cross = await keyTo(page, cross, tap);
    const fits = page.getByRole('button', { name: englishTrace('trace.it-fits') });
    await fits.waitFor();
    await pressTab(page, fits);
    // The button is gone, and Tab goes on from the steps.
    expect(await page.evaluate(() => document.activeElement?.className)).toBe('trace-steps');
  }
  await pressTab(page, page.getByRole('button', { name: englishTrace('trace.to-side') }));
  await choose(page, photo('side'));
  await tabTo(page, `application ${englishTrace('trace.photo-side')}`, 'Shift+Tab');
  await keyTo(page, await crossAt(page), TOP);
  await pressTab(page, page.getByRole('button', { name: englishTrace('trace.use-height') }));
  expect(await verdict(page)).toBe('Steady');
  expect(await number(page, english('read.height'))).toBe('14.4 cm');
  await expectTruth(page, 3);
});

it('a photo that was taken with the camera on its side is seen the right way up, once', async () => {
  const page = await openApp({ viewport: NARROW, touch: true });
  await openTrace(page);
  const firstMarker = (): Promise<string | null> => page.locator('.trace-marker').first().getAttribute('d');
  const places = async (): Promise<number[]> => [...((await firstMarker()) ?? '').matchAll(/[\d.]+/g)].map(Number);
  await choose(page, photo('top'));
  const upright = await places();
  await choose(page, await onItsSide(page, readFileSync(photo('top'))));
  const held = await places();
  expect(held).toHaveLength(upright.length);
  // The picture was packed anew: a tenth of a pixel.
  for (const [k, place] of upright.entries()) expect(Math.abs((held[k] ?? 0) - place)).toBeLessThan(0.5);
});

it('what is no photo to measure by is told with what to do', async () => {
  const page = await openApp();
  await openTrace(page);
  const top = readFileSync(photo('top'));
  const told = async (file: Parameters<typeof choose>[1]): Promise<string> => {
    await choose(page, file);
    return page.locator('.trace-steps .badbox').innerText();
  };
  expect(await told(TEXT)).toContain('not a photo');
  expect(await told(HEIC)).toContain('HEIC');
  expect(await told(HUGE)).toContain('9000 by 9000 pixels');
  expect(await told(damaged(top))).toContain('damaged');
  expect(await told(await plain(page, 1632, 1224, 'black'))).toContain('too dark');
  expect(await told(await blurred(page, top, 16))).toContain('blurred');
  expect(await told(await plain(page, 800, 600, 'white'))).toContain('800 by 600 pixels');
  expect(await told(await plain(page, 1632, 1224, 'white'))).toContain('cannot see the sheet');
  // None of them is in the way of a good one.
  await choose(page, photo('side'));
  await page.getByText(englishTrace('trace.is-side')).waitFor();
  await choose(page, photo('top'));
  await page.getByRole('heading', { name: englishTrace('trace.good') }).waitFor();
  expect(await page.getByText(englishTrace('trace.is-side')).count()).toBe(0);
});

it('without a photo of the side what was traced is still a build', async () => {
  const page = await openApp();
  await openTrace(page);
  await traceAbove(page, 1);
  await choose(page, TEXT);
  await page.getByRole('button', { name: englishTrace('trace.use-build') }).click();
  expect(await verdict(page)).toBe('Steady');
  expect(await page.locator('[data-piece]').count()).toBe(1);
});

/** mm. What a photo promises of places and of the height. */
const PLACE_MM = 1;
const HEIGHT_MM = 3;

async function expectTruth(page: Page, count: number): Promise<void> {
  await allKept(page);
  const { attempts } = JSON.parse((await savedClass(page)).text);
  const { layout, observed } = attempts.at(-1);
  expect(layout.pieces).toHaveLength(count);
  for (const [k, { x, y }] of TRUTH.pieces.slice(0, count).entries()) {
    const { xMm, yMm } = layout.pieces[k];
    expect(Math.hypot(xMm - x, yMm - y), `piece ${k}`).toBeLessThan(PLACE_MM);
  }
  expect(Math.abs(observed.photoHeightMm - TRUTH.heightMm)).toBeLessThan(HEIGHT_MM);
}

/** Tab to a button, then Enter. */
async function pressTab(page: Page, button: Locator): Promise<void> {
  const text = ((await button.textContent()) ?? '').replace(/\s+/g, ' ').trim();
  await tabTo(page, `button ${text}`);
  await page.keyboard.press('Enter');
}

/** px of the photo. The cross has arms; the first begins at its left end, and seven tenths of it are drawn. */
async function crossAt(page: Page): Promise<readonly [number, number]> {
  const d = (await page.locator('.trace-photo > svg > .trace-cross').getAttribute('d')) ?? '';
  const [left = 0, y = 0, drawn = 0] = [...d.matchAll(/[\d.]+/g)].map(Number);
  return [left + drawn / 0.7, y];
}
