// How much memory the app takes for a photo of 12 megapixels in Chromium: the most that its renderer ever held, with the photo from
// above read and shown, beside what it held before. What several processes share is counted in full. On Linux alone.

import { readFileSync } from 'node:fs';
import jpeg from 'jpeg-js';
import type { Browser } from 'playwright-core';
import { chromium } from 'playwright-core';
import { buildApp } from '../e2e/tools/build-app.ts';
import { howToLaunch } from '../e2e/tools/chromium.ts';
import { serveFolder } from '../e2e/tools/serve-folder.ts';
import { choose, openTrace, photo } from '../e2e/tools/tracing.ts';
import { englishTrace } from '../e2e/tools/words.ts';
import type { Report } from './measure.ts';

export const name = 'memory for a photo';

const [WIDTH, HEIGHT] = [4000, 3000];

export async function run(report: Report): Promise<void> {
  const site = await serveFolder(buildApp('bench'));
  const browser = await chromium.launch(howToLaunch('plain'));
  try {
    const page = await browser.newPage({ viewport: { width: 1366, height: 768 }, serviceWorkers: 'block' });
    await page.goto(site.address);
    await openTrace(page);
    const before = await mostMb(browser);
    const megapixels = (WIDTH * HEIGHT) / 1e6;
    await choose(page, { name: 'photo.jpg', mimeType: 'image/jpeg', buffer: enlarged(photo('top')) });
    await page.getByRole('heading', { name: englishTrace('trace.good') }).waitFor();
    const after = await mostMb(browser);
    report({ label: 'the renderer before', value: before, unit: 'MB' });
    report({ label: `the most with a photo of ${megapixels} megapixels`, value: after, unit: 'MB', target: '400' });
  } finally {
    await browser.close();
    await site.close();
  }
}

/** The most memory that the largest renderer has held so far, in millions of bytes. */
async function mostMb(browser: Browser): Promise<number> {
  const session = await browser.newBrowserCDPSession();
  const { processInfo } = await session.send('SystemInfo.getProcessInfo');
  await session.detach();
  const kibibytes = processInfo
    .filter(({ type }) => type === 'renderer')
    .map(({ id }) => Number(/VmHWM:\s+(\d+) kB/.exec(readFileSync(`/proc/${id}/status`, 'utf8'))?.[1]));
  return (Math.max(...kibibytes) * 1024) / 1e6;
}

function enlarged(path: string): Buffer {
  const { width, height, data } = jpeg.decode(readFileSync(path), { useTArray: true });
  const pixels = Buffer.alloc(4 * WIDTH * HEIGHT, 255);
  for (let y = 0; y < HEIGHT; y += 1) {
    for (let x = 0; x < WIDTH; x += 1) {
      const from = 4 * (Math.floor((y * height) / HEIGHT) * width + Math.floor((x * width) / WIDTH));
      for (let c = 0; c < 3; c += 1) pixels[4 * (y * WIDTH + x) + c] = data[from + c] ?? 0;
    }
  }
  return jpeg.encode({ width: WIDTH, height: HEIGHT, data: pixels }, 90).data;
}
