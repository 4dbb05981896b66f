// How long the app takes for each move of the pointer while a piece is dragged over a large build: the handlers themselves
// with all that they set going at once (the page is drawn anew in a microtask), and the longest task of the page meanwhile.

import { demoClass } from '@cairnmark/demo';
import type { ClassRecord } from '@cairnmark/engine';
import { encode } from '@cairnmark/formats';
import type { Layout } from '@cairnmark/geometry';
import type { Page } from 'playwright-core';
import { through } from './building.ts';

export interface MoveTimes {
  /** One a move, ms. */
  readonly handlersMs: readonly number[];
  /** Tasks of 50 ms and more are told by browsers; 0: there was none. */
  readonly longestTaskMs: number;
}

/** A class file whose first group has a wall of `count` cubes to build on: rows of six, each half a cube over the last. */
export function wallClass(count: number): string {
  const demo = demoClass();
  const [group, challenge] = [demo.groups[0], demo.challenges[0]];
  const attempt = demo.attempts.find((one) => one.group === group?.id && one.challenge === challenge?.id);
  if (group === undefined || challenge === undefined || attempt === undefined)
    throw new RangeError('no try to build on');
  const kinds = challenge.kit.kinds.map((kind) => ({ ...kind, stock: 99 }));
  const roomy = { ...challenge, kit: { ...challenge.kit, kinds } };
  const record: ClassRecord = {
    ...demo,
    challenges: demo.challenges.map((one) => (one === challenge ? roomy : one)),
    attempts: [{ ...attempt, layout: wall(count) }],
  };
  return encode('class', record);
}

/** On Build: picks a cube up from the shelf and moves it about over the build, `moves` times. The page was opened with `noteMoves`. */
export async function dragOverBuild(page: Page, moves: number): Promise<MoveTimes> {
  await through(page, 'lay');
  await page.locator('.verdict[aria-busy="false"]').waitFor();
  const scene = await page.locator('.drawing').boundingBox();
  if (scene === null) throw new Error('no drawing');
  await page.locator('[data-kind="cube"]').hover();
  await page.mouse.down();
  const at = (k: number): [number, number] => [
    scene.x + scene.width * (0.35 + 0.3 * Math.abs(Math.sin(k / 7))),
    scene.y + scene.height * (0.35 + 0.3 * Math.abs(Math.sin(k / 11))),
  ];
  // The first moves bring what is loaded once.
  for (let k = 0; k < 5; k += 1) await page.mouse.move(...at(k));
  await page.evaluate(() => Reflect.set(window, 'moveTimes', { handlersMs: [], longestTaskMs: 0 }));
  for (let k = 0; k < moves; k += 1) await page.mouse.move(...at(k));
  const times: MoveTimes = await page.evaluate(() => Reflect.get(window, 'moveTimes'));
  await page.keyboard.press('Escape');
  await page.mouse.up();
  return times;
}

/** Runs in the page before anything of its own. */
export function noteMoves(): void {
  const noted = { handlersMs: [] as number[], longestTaskMs: 0 };
  Reflect.set(window, 'moveTimes', noted);
  const now = (): typeof noted => Reflect.get(window, 'moveTimes');
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) now().longestTaskMs = Math.max(now().longestTaskMs, duration);
  }).observe({ type: 'longtask' });
  const timed = new WeakMap<object, EventListener>();
  const { addEventListener, removeEventListener } = EventTarget.prototype;
  EventTarget.prototype.addEventListener = function (name, listener, options) {
    if (name !== 'pointermove' || typeof listener !== 'function')
      return addEventListener.call(this, name, listener, options);
    const wrapped: EventListener = function (this: unknown, event) {
      const start = performance.now();
      listener.call(this as EventTarget, event);
      // After the microtasks that the listener has asked for.
      queueMicrotask(() => now().handlersMs.push(performance.now() - start));
    };
    timed.set(listener, wrapped);
    return addEventListener.call(this, name, wrapped, options);
  };
  EventTarget.prototype.removeEventListener = function (name, listener, options) {
    const wrapped = name === 'pointermove' && listener !== null ? timed.get(listener) : undefined;
    return removeEventListener.call(this, name, wrapped ?? listener, options);
  };
}

function wall(count: number): Layout {
  const row = 6;
  const pieces = Array.from({ length: count }, (_, k) => {
    const level = Math.floor(k / row);
    return { kind: 'cube', resting: 'base', xMm: (k % row) * 50 + (level % 2) * 25, yMm: 0, turnRad: 0 };
  });
  return { kind: 'laid-out', pieces };
}
