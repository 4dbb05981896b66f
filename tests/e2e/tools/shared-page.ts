// One device for all tests of a file, for what can be asked of a page one thing after another. It is watched like any other.

import type { Page } from 'playwright-core';
import { chromium } from 'playwright-core';
import { afterAll, beforeAll, expect, inject } from 'vitest';
import { CHROMEBOOK } from './open-app.ts';
import { watch } from './watch.ts';

/** How long an action waits for what it acts on, ms. */
const WAIT_MS = 20_000;

/** Called at the top of a file; what it answers gives the page inside of tests. `begin` brings it to where they start. */
export function sharedPage(begin: (page: Page) => Promise<void>): () => Page {
  const held: { page?: Page; close?: () => Promise<void>; faults?: readonly string[] } = {};
  beforeAll(async () => {
    const address = inject('appAddress');
    const browser = await chromium.connect(inject('browserAddress'));
    held.close = () => browser.close();
    const context = await browser.newContext({
      viewport: CHROMEBOOK,
      colorScheme: 'light',
      locale: 'en-GB',
      reducedMotion: 'reduce',
      serviceWorkers: 'block',
    });
    const page = await context.newPage();
    page.setDefaultTimeout(WAIT_MS);
    held.faults = watch(page, address);
    held.page = page;
    await page.goto(address);
    await begin(page);
  });
  afterAll(async () => {
    await held.close?.();
    expect(held.faults, 'what the page did besides').toEqual([]);
  });
  return () => {
    if (held.page === undefined) throw new RangeError('no page before the tests begin');
    return held.page;
  };
}
