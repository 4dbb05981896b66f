// Draws apps/web/public/icon.svg as the icons of an installed app, beside it. To be run when the drawing has changed.
//
//   npm run icons

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { findBrowser, NONE, thisMachine } from './browser.mjs';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const FOLDER = join(ROOT, 'apps/web/public');

/**
 * A system may cut a "maskable" icon to any shape that holds a circle of 4/5 of its width: at 0.72 the corners of the
 * lowest stone, 14.0 from the middle of a drawing 26 wide, are inside of it (10.4).
 */
const IN_THE_CIRCLE = 0.72;

const ICONS = [
  { name: 'icon-180.png', px: 180, part: 1 },
  { name: 'icon-192.png', px: 192, part: 1 },
  { name: 'icon-512.png', px: 512, part: 1 },
  { name: 'icon-maskable-512.png', px: 512, part: IN_THE_CIRCLE },
];

const executablePath = findBrowser(thisMachine(ROOT));
if (executablePath === undefined) throw new Error(NONE);
const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--force-color-profile=srgb'] });
const svg = readFileSync(join(FOLDER, 'icon.svg'), 'utf8');
const [, ground = ''] = /<rect [^>]*fill="(#[0-9a-f]+)"/.exec(svg) ?? [];
for (const { name, px, part } of ICONS) {
  const page = await browser.newPage({ viewport: { width: px, height: px } });
  const drawing = `data:image/svg+xml;base64,${Buffer.from(svg).toString('base64')}`;
  await page.setContent(
    `<body style="margin: 0; background: ${ground}; display: grid; place-items: center; height: 100vh">` +
      `<img src="${drawing}" width="${px * part}" height="${px * part}" style="display: block">`,
  );
  await page.locator('img').evaluate((/** @type {HTMLImageElement} */ image) => image.decode());
  await page.screenshot({ path: join(FOLDER, name) });
  await page.close();
}
await browser.close();
