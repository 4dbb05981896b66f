// "Trace it" on the other sheets: a fort round a courtyard on four pages that were taped together askew, and a box on a plain sheet.
// The photos are drawn by the renderer of tests/reference/photos, with known truth.

import jpeg from 'jpeg-js';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { diceOf } from '../reference/dice.ts';
import type { Built } from '../reference/photos/fresh-scenes.ts';
import { boxOnPlainSheet, FRESH, tapsOnBuilt, topTaps } from '../reference/photos/fresh-scenes.ts';
import { render } from '../reference/photos/render.ts';
import type { Scene, Shot } from '../reference/photos/scene.ts';
import { someShot } from '../reference/photos/scene.ts';
import { number, verdict } from './tools/building.ts';
import { line, onCard } from './tools/card.ts';
import { allKept, savedClass } from './tools/classes.ts';
import { openApp } from './tools/open-app.ts';
import { choose, clickOn, openTraceOf } from './tools/tracing.ts';
import { english, englishTrace } from './tools/words.ts';

const SEED = 7;
/** Two corners far from each other, as exactly as a click goes. */
const exactly = (): number => 0;

it('a fort of eight cubes on four pages: all on the table, with its courtyard', async () => {
  const dice = diceOf(SEED);
  const { scene, built } = FRESH['a fort round a courtyard, on four pages']!(dice);
  const [above, beside] = [someShot(dice, 20, 860, 30), someShot(dice, 70, 860, 40)];
  const page = await openApp();
  await openTraceOf(page, [{ id: 'cube-5', name: 'cube', solid: { solid: 'cube', sizes: { edge: 50 } }, stock: 8 }]);
  await page.getByLabel(englishTrace('trace.sheet')).selectOption({ label: englishTrace('trace.sheet-fort') });
  await choose(page, photographed(scene, above));
  await traceAll(page, built, above, () => 'cube-5');
  await page.getByRole('button', { name: englishTrace('trace.to-side'), exact: true }).click();
  await choose(page, photographed(scene, beside));
  for (const tap of topTaps(built, beside.camera, exactly)) await clickOn(page, tap);
  await page.getByRole('button', { name: englishTrace('trace.use-height') }).click();
  expect(await verdict(page)).toBe('Steady');
  expect(await number(page, english('read.height'))).toMatch(/^(4\.[789]|5\.[0-3]) cm$/);
  const { layout } = await lastTry(page);
  expect(layout.pieces).toHaveLength(8);
  await page.getByRole('link', { name: english('tab.score'), exact: true }).click();
  await onCard(page);
  const shown = Number.parseFloat((await line(page, 'Courtyard').innerText()).match(/([\d.]+) cm²/)?.[1] ?? '');
  // 5 cm square, and a place is a millimetre off.
  expect(Math.abs(shown - 25)).toBeLessThan(2);
});

it('a box on a plain sheet, seen from above and from the side', async () => {
  const dice = diceOf(SEED);
  const { scene, built } = boxOnPlainSheet(dice);
  const [above, beside] = [someShot(dice, 22, 560, 20), someShot(dice, 68, 560, 30)];
  const page = await openApp();
  const { solid } = built[0]!.placed;
  await openTraceOf(page, [{ id: 'box', name: 'box', solid: { solid: solid.id, sizes: solid.sizes }, stock: 1 }]);
  await page.getByLabel(englishTrace('trace.sheet')).selectOption({ label: englishTrace('trace.sheet-plain') });
  await choose(page, photographed(scene, above));
  await page.getByText(englishTrace('trace.edges')).waitFor();
  await traceAll(page, built, above, () => 'box');
  await page.getByRole('button', { name: englishTrace('trace.to-side'), exact: true }).click();
  await choose(page, photographed(scene, beside));
  for (const tap of topTaps(built, beside.camera, exactly)) await clickOn(page, tap);
  await page.getByRole('button', { name: englishTrace('trace.use-height') }).click();
  const { observed } = await lastTry(page);
  expect(Math.abs(observed.photoHeightMm - built[0]!.placed.topMm)).toBeLessThan(3);
});

const photographed = (scene: Scene, shot: Shot): { name: string; mimeType: string; buffer: Buffer } => {
  const { width, height, data } = render(scene, shot, SEED);
  const { data: buffer } = jpeg.encode({ width, height, data: Buffer.from(data) }, 92);
  return { name: 'photo.jpg', mimeType: 'image/jpeg', buffer };
};

async function traceAll(
  page: Page,
  built: readonly Built[],
  { camera }: Shot,
  kind: (k: number) => string,
): Promise<void> {
  for (const [k, { taps }] of tapsOnBuilt(built, camera, exactly).entries()) {
    await page.locator(`[data-trace-kind="${kind(k)}"]`).click();
    for (const tap of taps.pixels) await clickOn(page, tap);
    await page.getByRole('button', { name: englishTrace('trace.it-fits'), exact: true }).click();
  }
}

async function lastTry(page: Page) {
  await allKept(page);
  return JSON.parse((await savedClass(page)).text).attempts.at(-1);
}
