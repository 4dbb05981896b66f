// Dragging in "Lay it out", by a mouse or by a finger, to a place that is meant in millimetres.

import type { Page } from 'playwright-core';
import { atRest } from '../states/state.ts';
import { savedClass } from './classes.ts';
import { english } from './words.ts';

export type Px = readonly [x: number, y: number];

export interface LaidNow {
  readonly kind: string;
  readonly xMm: number;
  readonly yMm: number;
}

/** The pieces of the try laid last, as the class file has them. */
export async function layoutNow(page: Page): Promise<readonly LaidNow[]> {
  return JSON.parse((await savedClass(page)).text).attempts.at(-1).layout.pieces;
}

/** The middle of what a selector finds, px of the window. */
export async function middleOf(page: Page, selector: string): Promise<Px> {
  await page.locator(selector).scrollIntoViewIfNeeded();
  const box = await page.locator(selector).boundingBox();
  if (box === null) throw new Error(`${selector} has no place`);
  return [box.x + box.width / 2, box.y + box.height / 2];
}

/** Takes a piece from the shelf with the mouse and holds it over a place. */
export async function carryTo(page: Page, kind: string, [x, y]: Px): Promise<void> {
  await page.mouse.move(...(await middleOf(page, `[data-kind="${kind}"]`)));
  await page.mouse.down();
  await page.mouse.move(x, y, { steps: 6 });
}

/**
 * Takes a piece from the shelf and holds it over a place of the table. How the drawing lies is found by letting it go at two
 * places and undoing that; `down`: whether up and down in the drawing is to and fro on the table, as from above.
 */
export async function carryToMm(page: Page, kind: string, [xMm, yMm]: Px, from: Px, down: boolean): Promise<void> {
  await lineUp(page, 'free');
  const first = await probe(page, kind, from);
  const to: Px = [from[0] + APART_PX, from[1] + (down ? APART_PX : 0)];
  const second = await probe(page, kind, to);
  const x = from[0] + ((xMm - first.xMm) * APART_PX) / (second.xMm - first.xMm);
  const y = down ? from[1] + ((yMm - first.yMm) * APART_PX) / (second.yMm - first.yMm) : from[1];
  await lineUp(page, 'grid');
  await carryTo(page, kind, [x, y]);
}

const APART_PX = 70;

async function probe(page: Page, kind: string, at: Px): Promise<LaidNow> {
  await atRest(page);
  await carryTo(page, kind, at);
  await page.mouse.up();
  const laid = (await layoutNow(page)).at(-1);
  if (laid === undefined) throw new Error(`nothing was laid at ${at}`);
  await page.getByRole('button', { name: english('build.undo') }).click();
  return laid;
}

async function lineUp(page: Page, how: 'free' | 'grid'): Promise<void> {
  await page.getByLabel(english('line-up')).selectOption(how);
}

export interface Finger {
  down(at: Px): Promise<void>;
  /** Slides there from where it is. */
  slide(to: Px): Promise<void>;
  up(): Promise<void>;
  /** The device takes the touch away, as when a call comes in. */
  cancel(): Promise<void>;
}

/** A finger on the glass: the browser itself makes of it what it makes of any touch, scrolling too. */
export async function fingerOn(page: Page): Promise<Finger> {
  const device = await page.context().newCDPSession(page);
  let at: Px = [0, 0];
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd' | 'touchCancel', points: readonly Px[]) =>
    device.send('Input.dispatchTouchEvent', { type, touchPoints: points.map(([x, y]) => ({ x, y })) });
  return {
    down: async (place) => {
      at = place;
      await touch('touchStart', [at]);
    },
    slide: async (to) => {
      const from = at;
      for (let step = 1; step <= STEPS; step += 1) {
        const share = step / STEPS;
        at = [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share];
        await touch('touchMove', [at]);
        await page.waitForTimeout(16);
      }
    },
    up: async () => {
      await touch('touchEnd', []);
    },
    cancel: async () => {
      await touch('touchCancel', []);
    },
  };
}

const STEPS = 16;
