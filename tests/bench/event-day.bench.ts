// An event day of 24 groups and 5 challenges against the demo class, in turns in one browser: opening the class from its file
// until Build stands, a reading typed on the record sheet until it is kept, and the Board until every group has its row.

import { demoClass } from '@cairnmark/demo';
import { encode } from '@cairnmark/formats';
import type { Browser, Page } from 'playwright-core';
import { chromium } from 'playwright-core';
import { buildApp } from '../e2e/tools/build-app.ts';
import { howToLaunch } from '../e2e/tools/chromium.ts';
import { allKept, openClass, openScreen } from '../e2e/tools/classes.ts';
import { serveFolder } from '../e2e/tools/serve-folder.ts';
import { EVENT_CHALLENGES, EVENT_GROUPS, largeClass } from '../tools/records/large-class.ts';
import type { Report } from './measure.ts';
import { median } from './measure.ts';

export const name = 'an event day';

const ROUNDS = 5;

interface Times {
  readonly opening: number;
  readonly editing: number;
  readonly ranking: number;
}

export async function run(report: Report): Promise<void> {
  const site = await serveFolder(buildApp('bench'));
  const browser = await chromium.launch(howToLaunch('plain'));
  const texts = { demo: encode('class', demoClass()), event: encode('class', largeClass()) };
  const times = { demo: [] as Times[], event: [] as Times[] };
  try {
    for (let round = 0; round < ROUNDS; round += 1) {
      for (const which of ['demo', 'event'] as const)
        times[which].push(await timesOf(browser, site.address, texts[which]));
    }
  } finally {
    await browser.close();
    await site.close();
  }
  for (const what of ['opening', 'editing', 'ranking'] as const) {
    const [demo, event] = [times.demo, times.event].map((all) => median(all.map((one) => one[what]))) as [
      number,
      number,
    ];
    report({ label: `${what}: the demo class`, value: demo, unit: 'ms' });
    report({
      label: `${what}: ${EVENT_GROUPS} groups and ${EVENT_CHALLENGES} challenges, against it`,
      value: event / demo,
      unit: 'x',
    });
  }
}

async function timesOf(browser: Browser, address: string, text: string): Promise<Times> {
  const context = await browser.newContext({ viewport: { width: 1366, height: 768 }, serviceWorkers: 'block' });
  try {
    const page = await context.newPage();
    await page.goto(address);
    const opening = await took(() => openClass(page, text));
    await openScreen(page, 'record');
    const editing = await took(() => typeReading(page));
    const groups = await page.locator('.sheet-table tbody').count();
    const ranking = await took(async () => {
      await openScreen(page, 'board');
      await page.locator('.rank-table tbody tr').first().waitFor();
      await page.waitForFunction(() => document.querySelector('[aria-busy="true"]') === null);
    });
    if (groups === 0) throw new RangeError('the record sheet has no group');
    return { opening, editing, ranking };
  } finally {
    await context.close();
  }
}

async function typeReading(page: Page): Promise<void> {
  await page.locator('td[data-column="reading-1"] input').first().fill('35.7');
  await page.keyboard.press('Enter');
  await page.locator('[data-saved="saving"]').waitFor({ state: 'detached' });
  await allKept(page);
}

async function took(what: () => Promise<void>): Promise<number> {
  const start = performance.now();
  await what();
  return performance.now() - start;
}
