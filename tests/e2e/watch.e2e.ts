// The watch over the pages sees what it is there to see.

import { chromium } from 'playwright-core';
import { expect, inject, it, onTestFinished } from 'vitest';
import { watch } from './tools/watch.ts';

const WORKER = "new Worker(URL.createObjectURL(new Blob(['CODE'], { type: 'text/javascript' })))";

it.each([
  ['a line on the console', "console.debug('seen')", 'console debug: seen'],
  ['an error that nobody catches', "setTimeout(() => { throw new Error('seen'); })", 'thrown: seen'],
  ['a promise that nobody catches', "void Promise.reject(new Error('seen'))", 'thrown: seen'],
  ['a line of a worker', WORKER.replace('CODE', 'console.log(7)'), 'console log: 7'],
  ['an error of a worker', WORKER.replace('CODE', 'throw new Error("seen")'), 'thrown: seen'],
  ['a file that is not there', "void fetch('./no-such-file')", /^answered 404: .*no-such-file$/],
  [
    'another host',
    "void fetch('http://127.0.0.2:9/').catch(() => undefined)",
    'asks another host: http://127.0.0.2:9/',
  ],
  ['a box of the browser', "setTimeout(() => alert('seen'))", 'box of the browser: seen'],
])('sees %s', async (_, script, fault) => {
  const browser = await chromium.connect(inject('browserAddress'));
  onTestFinished(() => browser.close());
  const page = await browser.newPage({ serviceWorkers: 'block' });
  const faults = watch(page, inject('appAddress'));
  await page.goto(inject('appAddress'));
  expect(faults).toEqual([]);
  await page.evaluate(script);
  await expect.poll(() => faults).toContainEqual(typeof fault === 'string' ? fault : expect.stringMatching(fault));
});
