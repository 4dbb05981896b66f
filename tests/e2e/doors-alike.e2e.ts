// All doors alike: layouts that were made in the scene, by dragging and by its keys, are typed again in "Stack it" with the
// keyboard alone, and give the same record, byte for byte.

import type { LaidPiece } from '@cairnmark/geometry';
import { wordsFor } from '@cairnmark/words';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { seeded } from '../reference/seeded.ts';
import { share } from '../tools/share.ts';
import { newTry, through } from './tools/building.ts';
import { allKept, openDemo, savedClass } from './tools/classes.ts';
import { openApp } from './tools/open-app.ts';
import { english } from './tools/words.ts';

const SEED = 20_265;
const KINDS = ['cube', 'cuboid', 'tri-prism', 'hex-prism', 'sq-frustum', 'cylinder'];
const DEGREE = Math.PI / 180;

it(`${share(20, 4)} layouts made in the scene are typed again (seed ${SEED})`, async () => {
  const page = await openApp();
  await openDemo(page);
  const random = seeded(SEED);
  for (let k = 0; k < share(20, 4); k += 1) {
    await newTry(page);
    await through(page, 'lay');
    await makeInTheScene(page, random);
    const made = await piecesNow(page);
    expect(made.length, `layout ${k}`).toBeGreaterThan(0);
    await newTry(page);
    await through(page, 'stack');
    for (const piece of made) await typeAgain(page, piece);
    expect(JSON.stringify(await piecesNow(page)), `layout ${k}`).toBe(JSON.stringify(made));
  }
}, 900_000);

async function piecesNow(page: Page): Promise<readonly LaidPiece[]> {
  await allKept(page);
  const { attempts } = JSON.parse((await savedClass(page)).text);
  return attempts.at(-1).layout.pieces;
}

/** Two to four pieces dragged from the shelf to places on the sheet, each nudged, turned or laid on another face by keys. */
async function makeInTheScene(page: Page, random: () => number): Promise<void> {
  const canvas = await page.locator('.drawing').boundingBox();
  if (canvas === null) throw new Error('no drawing');
  const count = 2 + Math.floor(random() * 3);
  for (let k = 0; k < count; k += 1) {
    const kind = KINDS[Math.floor(random() * KINDS.length)];
    const [x, y] = [
      canvas.x + canvas.width * (0.25 + 0.3 * random()),
      canvas.y + canvas.height * (0.45 + 0.4 * random()),
    ];
    await page.locator(`[data-kind="${kind}"]`).hover();
    await page.mouse.down();
    await page.mouse.move(x, y, { steps: 5 });
    await page.mouse.up();
    const rows = page.locator('[data-piece]');
    await expect.poll(() => rows.count(), { message: `piece ${k}, a ${kind}` }).toBe(k + 1);
    await page.locator('.drawing').focus();
    for (const key of ['t', 'l', 'Shift+ArrowRight', 'Shift+t']) if (random() < 0.4) await page.keyboard.press(key);
  }
}

/** One piece by the controls of "Stack it": focus and keys, no pointer. */
async function typeAgain(page: Page, piece: LaidPiece): Promise<void> {
  await page.locator(`[data-kind="${piece.kind}"]`).focus();
  await page.keyboard.press('Enter');
  const tools = page.locator('.exact');
  await tools.waitFor();
  await press(page, tools.getByRole('button', { name: restingName(piece.resting), exact: true }));
  await tools.getByLabel(english('tool.measured-from')).focus();
  await page.keyboard.press('Home');
  await type(page, english('tool.turned'), String(Math.round(piece.turnRad / DEGREE)));
  await type(page, english('tool.offset-right'), `${piece.xMm} mm`);
  await type(page, english('tool.offset-back'), `${piece.yMm} mm`);
  const stand = tools.getByRole('button', { name: english('tool.stand') });
  if ((piece.on === 'table') !== ((await stand.getAttribute('aria-pressed')) === 'true')) await press(page, stand);
}

const press = async (page: Page, button: ReturnType<Page['locator']>): Promise<void> => {
  await button.focus();
  await page.keyboard.press('Enter');
};

async function type(page: Page, label: string, text: string): Promise<void> {
  const field = page.locator('.exact').getByLabel(label);
  await field.focus();
  await page.keyboard.press('Control+A');
  await page.keyboard.type(text);
  await page.keyboard.press('Enter');
}

/** The name of a side as the choice writes it. */
const restingName = (resting: string): string => RESTINGS[resting] ?? resting;

const RESTINGS: Readonly<Record<string, string>> = wordsFor('en').names.restings;
