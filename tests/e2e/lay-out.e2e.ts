// "Lay it out": a bridge dragged together with the mouse, what may not be put somewhere, drags that end otherwise than meant,
// and fingers on the shelf.

import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { inTurn } from '../tools/share.ts';
import { newTry, number, row, tapKinds, through, verdict } from './tools/building.ts';
import { openDemo } from './tools/classes.ts';
import type { Px } from './tools/dragging.ts';
import { carryTo, carryToMm, fingerOn, layoutNow, middleOf } from './tools/dragging.ts';
import type { Device } from './tools/open-app.ts';
import { openApp, TABLET } from './tools/open-app.ts';
import { english } from './tools/words.ts';

async function layingOut(device: Device = {}): Promise<Page> {
  const page = await openApp(device);
  await openDemo(page);
  await newTry(page);
  await through(page, 'lay');
  return page;
}

const canvas = (page: Page): Promise<Px> => middleOf(page, '.scene-canvas');
const note = (page: Page): Promise<string> => page.locator('.edit-note').innerText();
const badLabel = (page: Page): Promise<string> => page.locator('.scene-label.bad').innerText();
const look = (page: Page, view: 'above' | 'front') =>
  page
    .getByRole('group', { name: english('build.view') })
    .getByRole('button', { name: english(`view.${view}`) })
    .click();

it('a bridge: two pillars and a slab, then a piece under the lintel, which comes before it in the list', async () => {
  // Without the turning of the view a place in it is where it stays.
  const page = await layingOut();
  await look(page, 'above');
  const [x, y] = await canvas(page);
  for (const xMm of [-50, 50]) {
    await carryToMm(page, 'cube', [xMm, 0], [x - 60, y - 170], true);
    await page.mouse.up();
  }
  await carryToMm(page, 'cuboid', [0, 0], [x - 60, y - 170], true);
  // While it is held: 5 cm of pillar and 3 cm of slab, though nothing has been put down yet.
  await expect.poll(() => number(page, english('read.height'))).toBe('8.0 cm');
  expect(await page.locator('[data-piece]').count()).toBe(2);
  await page.mouse.up();
  expect(await number(page, english('read.base'))).toBe('50.0 cm²');

  await look(page, 'front');
  const [middle, table] = await middleOf(page, '.scene-marks .table-line');
  await carryToMm(page, 'cube', [0, 0], [middle - 230, table - 15], false);
  await expect.poll(() => number(page, english('read.base'))).toBe('75.0 cm²');
  expect(await number(page, english('read.height'))).toBe('8.0 cm');
  await page.mouse.up();
  await expect.poll(() => note(page)).toBe(english('edit.earlier', { number: 3, count: 4 }));
  const order = (await layoutNow(page)).map(({ kind, xMm }) => `${kind} ${Math.sign(xMm)}`);
  expect(order.join()).toBe('cube -1,cube 1,cube 0,cuboid 0');

  expect(await verdict(page)).toMatch(/^(Steady|Wobbly)$/);
  expect(await page.locator('.scene-marks .balance').count()).toBe(0);
  await page.getByRole('button', { name: english('verdict.show-why') }).click();
  await expect.poll(() => page.locator('.scene-marks .balance').count()).toBeGreaterThan(0);
});

it('a piece dragged off the table is shown in red with the reason, and nothing is changed', async () => {
  const page = await layingOut();
  await tapKinds(page, 'cube', 'cone');
  const before = await layoutNow(page);
  await page.mouse.move(...(await pieceOnScreen(page, 1)));
  await page.mouse.down();
  await page.mouse.move(...(await middleOf(page, '.list-head')), { steps: 6 });
  await expect.poll(() => badLabel(page)).toBe(english('drag.off-table'));
  await page.mouse.up();
  await expect.poll(() => note(page)).toBe(english('edit.off-table'));
  await expect.poll(() => page.locator('.scene-label.bad').count()).toBe(0);
  expect(await layoutNow(page)).toEqual(before);
});

it('a piece of which none is left can be carried into the scene, where it says so', async () => {
  const page = await layingOut();
  await tapKinds(page, ...Array.from({ length: 6 }, () => 'ball'));
  await carryTo(page, 'ball', await canvas(page));
  await expect.poll(() => badLabel(page)).toBe(english('drag.none-left'));
  await page.mouse.up();
  await expect.poll(() => note(page)).toBe(english('edit.none-left'));
  expect(await page.locator('[data-piece]').count()).toBe(6);
});

it.each(inTurn(['Escape', 'Delete', 'Control+z'], 3, 'keys'))(
  '%s in a drag ends it; letting go afterwards moves nothing',
  async (key) => {
    const page = await layingOut();
    await tapKinds(page, 'cube', 'cube');
    const before = await layoutNow(page);
    const [x, y] = await pieceOnScreen(page, 2);
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x - 120, y + 20, { steps: 6 });
    await page.keyboard.press(key);
    await page.mouse.move(x - 140, y + 20, { steps: 2 });
    await page.mouse.up();
    expect(await layoutNow(page)).toEqual(key === 'Escape' ? before : before.slice(0, 1));
  },
);

it('a piece that is carried back to the shelf, or given up over it, is not put on top', async () => {
  const page = await layingOut();
  const shelf = await middleOf(page, '[data-kind="cube"]');
  for (const key of ['Shift', 'Escape']) {
    await carryTo(page, 'cube', await canvas(page));
    await page.mouse.move(...shelf, { steps: 6 });
    await page.keyboard.press(key);
    await page.mouse.up();
    await page.waitForTimeout(50);
    expect(await page.locator('[data-piece]').count()).toBe(0);
  }
  // The next tap is a tap again.
  await page.locator('[data-kind="cube"]').click();
  await expect.poll(() => page.locator('[data-piece]').count()).toBe(1);
});

it('the right button drags nothing, and two quick clicks only pick', async () => {
  const page = await layingOut();
  await tapKinds(page, 'cube');
  const before = await layoutNow(page);
  const [x, y] = await pieceOnScreen(page, 1);
  await page.mouse.dblclick(x, y);
  expect(await row(page, 1).getAttribute('aria-expanded')).toBe('true');
  await page.mouse.move(x, y);
  await page.mouse.down({ button: 'right' });
  await page.mouse.move(x - 120, y + 20, { steps: 6 });
  await page.mouse.up({ button: 'right' });
  expect(await layoutNow(page)).toEqual(before);
});

it('a window that changes its size in a drag goes on with it', async () => {
  const page = await layingOut();
  await tapKinds(page, 'cube');
  await carryTo(page, 'cone', await canvas(page));
  await page.setViewportSize({ width: 1100, height: 700 });
  const [x, y] = await canvas(page);
  await page.mouse.move(x - 150, y + 100, { steps: 4 });
  await page.mouse.up();
  await expect.poll(() => page.locator('[data-piece]').count()).toBe(2);
});

it('a tap on the face it has already is no step that can be undone', async () => {
  const page = await layingOut();
  await tapKinds(page, 'cube');
  await page.locator('.drawing').focus();
  await page.keyboard.press('l');
  await page.getByRole('button', { name: english('build.undo') }).click();
  await expect.poll(() => page.locator('[data-piece]').count()).toBe(0);
});

it.each([
  ['beside the scene: up and down scrolls, sideways drags', { width: 1366, height: 560 }, [0, -150], [120, 0]],
  ['under the scene: sideways scrolls, upwards drags', TABLET, [-200, 0], [0, -80]],
] as const)('a finger on a shelf %s', async (_, viewport, scroll, drag) => {
  const page = await layingOut({ viewport, touch: true });
  const finger = await fingerOn(page);
  const [x, y] = await middleOf(page, '[data-kind="hex-prism"]');
  await finger.down([x, y]);
  await finger.slide([x + scroll[0], y + scroll[1]]);
  await finger.up();
  const scrolled = () => page.locator('.shelf ul').evaluate(({ scrollLeft, scrollTop }) => scrollLeft + scrollTop);
  await expect.poll(scrolled).toBeGreaterThan(60);
  expect(await page.locator('[data-piece]').count()).toBe(0);

  const [left, top] = await middleOf(page, '[data-kind="cylinder"]');
  await finger.down([left, top]);
  await finger.slide([left + drag[0], top + drag[1]]);
  await finger.slide(await canvas(page));
  await expect.poll(() => number(page, english('read.height'))).toBe('8.0 cm');
  await finger.up();
  await expect.poll(() => page.locator('[data-piece]').count()).toBe(1);
});

it('a touch that the device takes away in a drag changes nothing', async () => {
  const page = await layingOut({ viewport: TABLET, touch: true });
  await tapKinds(page, 'cube');
  const before = await layoutNow(page);
  const finger = await fingerOn(page);
  const [x, y] = await middleOf(page, '[data-kind="hex-prism"]');
  await finger.down([x, y]);
  await finger.slide([x, y - 80]);
  await finger.slide(await canvas(page));
  await expect.poll(() => number(page, english('read.height'))).not.toBe('5.0 cm');
  await finger.cancel();
  expect(await layoutNow(page)).toEqual(before);
  expect(await number(page, english('read.height'))).toBe('5.0 cm');
});

it('a piece held where the build would fall: the list and the drawing stay those of the build, and all goes on', async () => {
  const page = await layingOut();
  await look(page, 'above');
  const [x, y] = await canvas(page);
  await carryToMm(page, 'cube', [0, 0], [x - 60, y - 170], true);
  await page.mouse.up();
  await carryToMm(page, 'cube', [40, 0], [x - 60, y - 170], true);
  await expect.poll(() => page.locator('.verdict h2').innerText()).toBe('Falls');
  expect(await page.locator('.list li.falls, .scene-marks .balance').count()).toBe(0);
  await page.mouse.up();
  await expect.poll(() => page.locator('.list li.falls').count()).toBe(1);
});

it('two groups of pieces that go over are both marked and both stand out in the list', async () => {
  const page = await layingOut();
  await look(page, 'above');
  const [x, y] = await canvas(page);
  for (const xMm of [-80, 80]) {
    await carryToMm(page, 'cube', [xMm, 0], [x - 60, y - 170], true);
    await page.mouse.up();
  }
  for (const xMm of [-120, 120]) {
    await carryToMm(page, 'cube', [xMm, 0], [x - 60, y - 170], true);
    await page.mouse.up();
  }
  expect(await verdict(page)).toBe('Falls');
  expect(await page.locator('.list li.falls').count()).toBe(2);
  await expect.poll(() => page.locator('.scene-marks .balance.bad').count()).toBe(2);
});

it('a tower of more than a metre is shown with the caution, and the help has it for all', async () => {
  const page = await openApp();
  await openDemo(page);
  await newTry(page);
  await tapKinds(page, ...Array.from({ length: 12 }, () => 'cube'), ...Array.from({ length: 5 }, () => 'hex-prism'));
  expect(await number(page, english('read.height'))).toBe('100.0 cm');
  const caution = () => page.locator('.caution').innerText();
  expect(await caution()).toBe('');
  await page.getByRole('button', { name: english('frame.help') }).click();
  expect(await page.locator('.verdict .help').allInnerTexts()).toContainEqual(expect.stringMatching(/stand clear/i));
  await tapKinds(page, 'hex-prism');
  await expect.poll(caution).toMatch(/stand clear when testing\. Never climb/i);
});

/** A place in the drawing at which a tap picks this piece, counted from 1 at the table; nothing is picked afterwards. */
async function pieceOnScreen(page: Page, piece: number): Promise<Px> {
  const box = await page.locator('.scene-canvas').boundingBox();
  if (box === null) throw new Error('there is no drawing');
  for (let up = 0.9; up > 0.1; up -= 0.05) {
    for (let across = 0.3; across < 0.6; across += 0.04) {
      const place: Px = [box.x + box.width * across, box.y + box.height * up];
      await page.mouse.click(...place);
      if ((await row(page, piece).getAttribute('aria-expanded')) !== 'true') continue;
      await row(page, piece).click();
      return place;
    }
  }
  throw new Error(`no tap picks piece ${piece}`);
}
