// Opens the app on a fresh device: its own browser profile, nothing kept, nothing known. When the test ends the device is
// thrown away, and the test fails if the page did anything that watch.ts forbids. Where a failed test ended is seen in
// .cache/e2e-failed.

import { join } from 'node:path';
import type { BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { chromium } from 'playwright-core';
import { expect, inject, onTestFinished } from 'vitest';
import { ROOT } from '../../tools/files.ts';
import { SCHOOL_HOST } from './chromium.ts';
import { watch } from './watch.ts';

/** How long an action waits for what it acts on, ms. */
const WAIT_MS = 30_000;

export interface Device {
  readonly viewport?: { readonly width: number; readonly height: number };
  readonly colorScheme?: 'light' | 'dark';
  /** The browser's language, as 'es-MX'. */
  readonly locale?: string;
  readonly touch?: boolean;
  /** Pieces drop and views turn. Off unless asked for: a browser that draws in software draws each step slowly. */
  readonly motion?: boolean;
  /** Where the app is, when it is not the one that is served for all tests. */
  readonly address?: string;
  /** Has no network from the start, and never had. */
  readonly neverOnline?: boolean;
  /** Without network once the page stands; see also `page.context().setOffline`. */
  readonly offline?: boolean;
  /** Keeps the app itself, so that it starts without network. */
  readonly keeps?: boolean;
  /** Reached over plain http by a name in the school's network, where browsers allow less than on this machine. */
  readonly overNetwork?: boolean;
  /** What the test itself makes the page tell: a network that fails, for instance. */
  readonly provokes?: RegExp;
  /** Where the app is opened: '#/build' and so on. */
  readonly at?: string;
  /** Runs in the page before anything of the app, on every load. */
  readonly before?: () => void;
}

/** 1366 x 768, light, English, mouse and keyboard, nothing moves unless said otherwise. */
export const CHROMEBOOK = { width: 1366, height: 768 } as const;
export const TABLET = { width: 768, height: 1024 } as const;
export const PROJECTOR = { width: 1920, height: 1080 } as const;
/** The narrowest window that needs no scrolling sideways (WCAG 1.4.10). */
export const NARROW = { width: 320, height: 640 } as const;

export async function openApp(device: Device = {}): Promise<Page> {
  const { overNetwork, address: asked = inject('appAddress') } = device;
  const address = asked.replace('127.0.0.1', overNetwork === true ? SCHOOL_HOST : '127.0.0.1');
  const page = await newPage(await freshContext(device), address, device.provokes);
  if (device.neverOnline === true) await page.context().setOffline(true);
  await page.goto(`${address}${device.at ?? ''}`);
  await page.locator('h1').first().waitFor({ state: 'attached' });
  if (device.offline === true) await page.context().setOffline(true);
  return page;
}

/** A further page of the same device, watched like the first. It is not yet at the app. */
export async function newPage(
  context: BrowserContext,
  address = inject('appAddress'),
  provoked?: RegExp,
): Promise<Page> {
  const page = await context.newPage();
  page.setDefaultTimeout(WAIT_MS);
  const faults = watch(page, address);
  onTestFinished(async ({ task }) => {
    // What the page has told by now arrives before its answer.
    if (!page.isClosed()) await page.evaluate(() => undefined);
    if (task.result?.state === 'fail' && !page.isClosed()) await lastSight(page, task.name);
    const besides = faults.filter((fault) => provoked?.test(fault) !== true);
    expect(besides, 'what the page did besides').toEqual([]);
  });
  return page;
}

/** A picture of the page of a failed test, for whoever looks into it. */
async function lastSight(page: Page, test: string): Promise<void> {
  const name = test.replace(/[^\w]+/g, '-').slice(0, 80);
  await page.screenshot({ path: join(ROOT, '.cache/e2e-failed', `${name}.png`) });
}

async function freshContext(device: Device): Promise<BrowserContext> {
  const browser = await chromium.connect(inject('browserAddress'));
  onTestFinished(() => browser.close());
  const context = await browser.newContext(optionsOf(device));
  if (device.before !== undefined) await context.addInitScript(device.before);
  return context;
}

function optionsOf({
  viewport = CHROMEBOOK,
  colorScheme,
  locale,
  touch,
  motion,
  keeps,
}: Device): BrowserContextOptions {
  return {
    viewport,
    colorScheme: colorScheme ?? 'light',
    locale: locale ?? 'en-GB',
    timezoneId: 'Europe/London',
    hasTouch: touch === true,
    isMobile: touch === true,
    reducedMotion: motion === true ? 'no-preference' : 'reduce',
    // Every page is from the network, where a test can hold it up; keeping the app offline has tests of its own.
    serviceWorkers: keeps === true ? 'allow' : 'block',
  };
}
