// A state of the app that is worth looking at. Each is held to what holds for all (every-state.e2e.ts) and has its picture
// taken (npm run screenshots).

import type { Page } from 'playwright-core';
import type { Device } from '../tools/open-app.ts';

export interface State {
  /** Screen, then state: "build-falls". */
  readonly name: string;
  readonly device?: Device;
  /** From the opened app, at Start, to the state. */
  readonly go: (page: Page) => Promise<void>;
}

/** Waits until nothing is being worked out, loaded or moved any more. A part that is at work says `aria-busy="true"`. */
export async function settled(page: Page): Promise<void> {
  await page.waitForLoadState('networkidle');
  await page.waitForFunction(() => document.querySelector('[aria-busy="true"], [data-saved="saving"]') === null);
  await page.evaluate(async () => {
    await document.fonts.ready;
    await Promise.allSettled(document.getAnimations().map(({ finished }) => finished));
    await new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn)));
  });
}
