// Build, as a group uses it: a tower by taps, a bridge laid out, a rule broken and kept, a fall and its mend, just numbers,
// undo, reload, keys alone, touch, Spanish.

import { expect, it } from 'vitest';
import { settled } from './states/state.ts';
import { newTry, number, row, tapKinds, through, tool, verdict } from './tools/building.ts';
import { allKept, goTo, openDemo, openScreen, reload, savedClass } from './tools/classes.ts';
import { pressOn, tabTo } from './tools/keyboard.ts';
import { CHROMEBOOK, openApp, TABLET } from './tools/open-app.ts';
import { english } from './tools/words.ts';

it('a tower of five takes five taps, and its numbers are those of the hand calculation', async () => {
  const page = await openApp({ motion: true });
  await openDemo(page);
  await newTry(page);
  await tapKinds(page, 'cube', 'cube', 'cube', 'cube', 'sq-pyramid');
  // Four cubes of 5 cm and a pyramid of 6 cm; base 5 x 5 cm; 4 x 125 + 1/3 x 25 x 6 cm3.
  await expect.poll(() => number(page, english('read.height'))).toBe('26.0 cm');
  expect(await number(page, english('read.base'))).toBe('25.0 cm²');
  expect(await number(page, english('read.volume'))).toMatch(/^550(\.0)? cm³$/);
  expect(await verdict(page)).toMatch(/^(Steady|Wobbly)$/);
  expect(await page.locator('.go .points b').innerText()).toBe('26');
});

it('showing an empty table says what comes first, in letters that stay readable', async () => {
  const page = await openApp();
  await openDemo(page);
  await newTry(page);
  const show = page.getByRole('button', { name: english('build.show') });
  const paper = (): Promise<string> => show.evaluate((button) => getComputedStyle(button).backgroundColor);
  await page.mouse.move(1, 1);
  const before = await paper();
  await show.click({ force: true });
  expect(await paper()).toBe(before);
  expect(await page.locator('.go').innerText()).toContain(english('build.show-empty'));
});

it('the ranking changes with the build', async () => {
  const page = await openApp();
  await openDemo(page);
  const board = (): Promise<string> => page.getByRole('main').innerText();
  await openScreen(page, 'board');
  await expect.poll(board).toMatch(/Terns/);
  await settled(page);
  const before = await board();
  await openScreen(page, 'build');
  await goTo(page, 'Terns');
  await row(page, 5).click();
  await tool(page, english('tool.take-off')).click();
  await allKept(page);
  await openScreen(page, 'board');
  await expect.poll(async () => /Terns/.test(await board()) && (await board()) !== before).toBe(true);
});

it('a rule broken is told with its figures, and the button keeps it', async () => {
  const page = await openApp();
  await openDemo(page);
  await newTry(page);
  await tapKinds(page, 'cube', 'cube', 'cube', 'cube', 'cube', 'cube');
  expect(await verdict(page)).toBe(english('verdict.one-broken'));
  await expect.poll(() => page.locator('.rules li.broken').innerText()).toMatch(/exactly 5 pieces, 6 now/i);
  await page.getByRole('button', { name: /Take off piece 6/ }).click();
  expect(await verdict(page)).not.toBe(english('verdict.one-broken'));
  expect(await page.locator('.rules li.broken').count()).toBe(0);
});

it('a build that falls says what goes and how far past, and the move makes it stand', async () => {
  const page = await openApp();
  await openDemo(page);
  await goTo(page, 'Eiders');
  expect(await verdict(page)).toBe('Falls');
  expect(await page.locator('.verdict p').innerText()).toMatch(/go(es)? over: the balance point is [\d.]+ cm past/);
  await page.getByRole('button', { name: english('verdict.move-them') }).click();
  expect(await verdict(page)).not.toBe('Falls');
  expect(await page.locator('.list li.falls').count()).toBe(0);
});

it.each([CHROMEBOOK, TABLET])('the page fills a window of $width x $height px and never scrolls', async (viewport) => {
  const page = await openApp({ viewport });
  await openDemo(page);
  const pastTheWindow = (): Promise<number> => page.evaluate(() => document.documentElement.scrollHeight - innerHeight);
  expect(await pastTheWindow()).toBe(0);
  await page.getByRole('button', { name: english('verdict.show-why') }).click();
  await row(page, 3).click();
  expect(await pastTheWindow()).toBe(0);
});

it('just the numbers: readings and pieces make a record, and it can be stacked later', async () => {
  const page = await openApp();
  await openDemo(page);
  await newTry(page);
  await through(page, 'numbers');
  await tapKinds(page, 'cube', 'cube', 'cone');
  await page.getByLabel(english('numbers.height')).fill('13,5');
  await page.getByRole('button', { name: english('numbers.add-reading') }).click();
  await page.getByLabel(english('numbers.seconds')).fill('12');
  await page.getByLabel(english('numbers.seconds')).press('Enter');
  await allKept(page);
  const { attempts } = JSON.parse((await savedClass(page)).text);
  const last = attempts.at(-1);
  expect(last.layout).toEqual({ kind: 'numbers-only', pieces: ['cube', 'cube', 'cone'] });
  expect(last.observed).toEqual({ heightReadingsMm: [135], stoodSeconds: 12 });
  await page.getByRole('button', { name: english('numbers.draw') }).click();
  expect(await number(page, english('read.height'))).toBe('14.0 cm');
});

it('undo goes back to the beginning, redo to the end, and a reload keeps the build', async () => {
  const page = await openApp();
  await openDemo(page);
  await newTry(page);
  await tapKinds(page, 'cube', 'cone');
  await row(page, 1).click();
  await tool(page, english('tool.right')).click();
  const layoutNow = async () => JSON.parse((await savedClass(page)).text).attempts.at(-1).layout.pieces;
  const built = await layoutNow();
  const undo = page.getByRole('button', { name: english('build.undo') });
  for (let k = 0; k < 5; k += 1) await undo.click({ force: true });
  expect(await layoutNow()).toEqual([]);
  const redo = page.getByRole('button', { name: english('build.redo') });
  for (let k = 0; k < 5; k += 1) await redo.click({ force: true });
  expect(await layoutNow()).toEqual(built);
  await allKept(page);
  await reload(page);
  await page.locator('[data-piece]').first().waitFor();
  expect(await layoutNow()).toEqual(built);
});

it('by keys alone: a tower, a nudge, a turn, another face, a copy, off again', async () => {
  const page = await openApp();
  await openDemo(page);
  await newTry(page);
  await tabTo(page, `application ${english('build.scene')}`);
  for (const key of ['1', '2', 'ArrowRight', 'Shift+ArrowUp', 't', 'l', 'd', 'Delete']) await page.keyboard.press(key);
  await allKept(page);
  const { pieces } = JSON.parse((await savedClass(page)).text).attempts.at(-1).layout;
  expect(pieces.map(({ kind }: { kind: string }) => kind)).toEqual(['cube', 'cuboid']);
  expect(pieces[1]).toMatchObject({ xMm: 5, yMm: 1, turnRad: Math.PI / 12 });
  expect(pieces[1].resting).not.toBe('base');
});

it('by keys alone through the list: pick a piece and take it off', async () => {
  const page = await openApp();
  await openDemo(page);
  await newTry(page);
  await page.locator('[data-kind="cube"]').focus();
  await page.keyboard.press('Enter');
  await page.keyboard.press('Enter');
  await page.locator('[data-piece="0"]').focus();
  await page.keyboard.press('Enter');
  await pressOn(page, `button ${english('tool.take-off')}`);
  await expect.poll(() => page.locator('[data-piece]').count()).toBe(1);
});

it('a piece of which none is left stays on the shelf, and it is said', async () => {
  const page = await openApp();
  await openDemo(page);
  await newTry(page);
  await tapKinds(page, ...Array.from({ length: 6 }, () => 'ball'));
  await page.locator('[data-kind="ball"]').click({ force: true });
  await expect.poll(() => page.locator('.edit-note').innerText()).toBe(english('edit.none-left'));
});

it('on a tablet by touch: a piece is dragged from the shelf into the scene and settles on the cube', async () => {
  const page = await openApp({ viewport: TABLET });
  await openDemo(page);
  await newTry(page);
  await through(page, 'lay');
  await tapKinds(page, 'cube');
  const canvas = await page.locator('.drawing canvas').boundingBox();
  const shelf = await page.locator('[data-kind="cone"]').boundingBox();
  if (canvas === null || shelf === null) throw new Error('nothing to drag');
  await page.locator('[data-kind="cone"]').hover();
  await page.mouse.down();
  await page.mouse.move(shelf.x + 60, shelf.y - 40, { steps: 4 });
  const found = await dropOver(page, canvas);
  expect(found).toBe(true);
  await page.mouse.up();
  await allKept(page);
  const { pieces } = JSON.parse((await savedClass(page)).text).attempts.at(-1).layout;
  expect(pieces.map(({ kind }: { kind: string }) => kind)).toEqual(['cube', 'cone']);
  expect(await number(page, english('read.height'))).toBe('9.0 cm');
});

/** Moves over the canvas until the live height says that the piece would lie on the cube: 5 cm and the 4 cm of the cone. */
async function dropOver(
  page: Parameters<typeof number>[0],
  { x, y, width, height }: { x: number; y: number; width: number; height: number },
): Promise<boolean> {
  for (let row = 0.9; row > 0.2; row -= 0.04) {
    await page.mouse.move(x + width * 0.42, y + height * row, { steps: 2 });
    await page.waitForTimeout(250);
    if ((await number(page, english('read.height'))) === '9.0 cm') return true;
  }
  return false;
}

it('in Spanish, with a decimal comma', async () => {
  const page = await openApp({ locale: 'es-MX' });
  await page.getByRole('button', { name: 'Abrir la muestra' }).click();
  await page.locator('.verdict[aria-busy="false"]').waitFor();
  await expect.poll(() => page.locator('.read dd').first().innerText()).toMatch(/^38,0\s*cm$/);
  expect(await page.locator('.verdict h2').innerText()).toMatch(/^(Tambaleante|Inestable|Estable|Firme)/);
});
