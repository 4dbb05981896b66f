// What `npm start` starts: it says where the app is, and the app is there.

import { spawn } from 'node:child_process';
import { createInterface } from 'node:readline/promises';
import { chromium } from 'playwright-core';
import { expect, inject, it, onTestFinished } from 'vitest';
import { ROOT } from '../tools/files.ts';
import { openDemo } from './tools/classes.ts';
import { newPage } from './tools/open-app.ts';

it('builds the app, prints its address and nothing else, and serves it there', async () => {
  const serving = spawn(process.execPath, ['apps/web/serve.mjs', '0'], {
    cwd: ROOT,
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  onTestFinished(() => void serving.kill());
  let complaints = '';
  serving.stderr.on('data', (chunk: Buffer) => {
    complaints += chunk.toString();
  });
  const { value: line = '' } = await createInterface(serving.stdout)[Symbol.asyncIterator]().next();
  expect([line, complaints]).toEqual([expect.stringMatching(/^Cairnmark {2}http:\/\/localhost:\d+\/$/), '']);

  const address = line.replace('Cairnmark', '').trim();
  const browser = await chromium.connect(inject('browserAddress'));
  onTestFinished(() => browser.close());
  const page = await newPage(await browser.newContext({ locale: 'en-GB' }), address);
  await page.goto(address);
  await openDemo(page);
});
