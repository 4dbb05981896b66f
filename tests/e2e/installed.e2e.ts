// The app as one that is installed: what the browser itself says of it, its icons and its colours.

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { chromium } from 'playwright-core';
import { expect, inject, it, onTestFinished } from 'vitest';
import { howToLaunch } from './tools/chromium.ts';

it('the browser finds nothing against installing it; icons have their sizes, and bars the colour of the page', async () => {
  const page = await ownProfile();
  await page.goto(inject('appAddress'));
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  const browser = await page.context().newCDPSession(page);
  const { url, errors, data = '{}' } = await browser.send('Page.getAppManifest');
  expect([url, errors]).toEqual([`${inject('appAddress')}manifest.json`, []]);
  expect((await browser.send('Page.getInstallabilityErrors')).installabilityErrors).toEqual([]);

  const manifest: Manifest = JSON.parse(data);
  for (const { src, sizes } of manifest.icons) {
    const [width, height] = await sizeOf(page, src);
    expect(`${width}x${height}`, src).toBe(sizes === 'any' ? `${width}x${width}` : sizes);
  }
  for (const drawn of ['icon-192.png', 'icon-512.png']) {
    expect(await differenceOf(page, 'icon.svg', drawn), `${drawn} against icon.svg: see npm run icons`).toBeLessThan(3);
  }
  const { theme_color, background_color } = manifest;
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    const { paper, bar } = await coloursOf(page);
    expect(bar, colorScheme).toBe(paper);
    if (colorScheme === 'light') expect([theme_color, background_color]).toEqual([paper, paper]);
  }
  // The browser does tell: a page that no longer has its manifest is refused.
  await page.evaluate(() => document.querySelector('link[rel="manifest"]')?.remove());
  const { installabilityErrors } = await browser.send('Page.getInstallabilityErrors');
  expect(installabilityErrors.map(({ errorId }) => errorId)).toEqual(['no-manifest']);
});

interface Manifest {
  readonly icons: readonly { readonly src: string; readonly sizes: string }[];
  readonly theme_color: string;
  readonly background_color: string;
}

/** A browser with a profile on the disk: one that forgets everything installs nothing. */
async function ownProfile(): Promise<Page> {
  const profile = mkdtempSync(join(tmpdir(), 'cairnmark-'));
  const context = await chromium.launchPersistentContext(profile, { ...howToLaunch('plain'), locale: 'en-GB' });
  onTestFinished(async () => {
    await context.close();
    rmSync(profile, { recursive: true, force: true, maxRetries: 3 });
  });
  return context.newPage();
}

const sizeOf = (page: Page, src: string): Promise<[number, number]> =>
  page.evaluate(async (address) => {
    const image = new Image();
    image.src = address;
    await image.decode();
    return [image.naturalWidth, image.naturalHeight];
  }, src);

/** Of two drawings, as a mean over all points and colours, out of 255; the same drawing scaled twice differs at its edges. */
const differenceOf = (page: Page, one: string, other: string): Promise<number> =>
  page.evaluate(
    async (addresses) => {
      const [a = [], b = []] = await Promise.all(
        addresses.map(async (address) => {
          const image = new Image(64, 64);
          image.src = address;
          await image.decode();
          const drawn = new OffscreenCanvas(64, 64).getContext('2d')!;
          drawn.drawImage(image, 0, 0, 64, 64);
          return [...drawn.getImageData(0, 0, 64, 64).data];
        }),
      );
      return a.reduce((sum, value, k) => sum + Math.abs(value - b[k]!), 0) / a.length;
    },
    [one, other],
  );

/** That of the page and that of the browser's bar, both as '#rrggbb'. */
const coloursOf = (page: Page): Promise<{ paper: string; bar: string }> =>
  page.evaluate(() => {
    const drawn = document.createElement('canvas').getContext('2d')!;
    const written = (colour: string): string => {
      drawn.fillStyle = colour;
      return String(drawn.fillStyle);
    };
    const metas = [...document.querySelectorAll<HTMLMetaElement>('meta[name="theme-color"]')];
    const paper = getComputedStyle(document.documentElement).getPropertyValue('--paper');
    return { paper: written(paper), bar: written(metas.find(({ media }) => matchMedia(media).matches)?.content ?? '') };
  });
