// A state of the app that is worth looking at. Each is held to what holds for all (every-state.e2e.ts) and has its picture
// taken (npm run screenshots).

import type { Page } from 'playwright-core';
import type { Device } from '../tools/open-app.ts';

export interface State {
  /** Screen, then state: "build-falls". */
  readonly name: string;
  readonly device?: Device;
  /** It is at work and stays so. */
  readonly atWork?: true;
  /** From the opened app, at Start, to the state. */
  readonly go: (page: Page) => Promise<void>;
}

/** Waits until nothing is being loaded, worked out or moved any more. */
export async function settled(page: Page, state: Pick<State, 'atWork'> = {}): Promise<void> {
  await page.waitForLoadState('networkidle');
  await atRest(page, state);
}

/**
 * The same where nothing more is loaded: the network is watched for half a second. Of a state that stays at work, until
 * nothing moves. A part that is at work says `aria-busy="true"`.
 */
export async function atRest(page: Page, { atWork }: Pick<State, 'atWork'> = {}): Promise<void> {
  const busy = atWork === true ? '[data-saved="saving"]' : '[aria-busy="true"], [data-saved="saving"]';
  await page.waitForFunction((selector) => document.querySelector(selector) === null, busy);
  await page.evaluate(async () => {
    await document.fonts.ready;
    await Promise.allSettled(document.getAnimations().map(({ finished }) => finished));
    await new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn)));
  });
}
