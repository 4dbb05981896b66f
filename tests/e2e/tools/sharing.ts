// Tries on their way from device to device, as people hand them over.

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';
import { prepareZXingModule, writeBarcode } from 'zxing-wasm/writer';
import { english, englishPlan } from './words.ts';

/** A file as an input takes it. */
export interface Handed {
  readonly name: string;
  readonly mimeType: string;
  readonly buffer: Buffer;
}

/** On the Score card: opens the ways out and in. */
export async function openShare(page: Page): Promise<void> {
  await page.getByRole('button', { name: english('score-card.share'), exact: true }).click();
  await page.getByLabel(englishPlan('share.choose')).waitFor({ state: 'attached' });
}

/** How a camera sees a screen: `css` bends and blurs it, `sizePx` is the side of the code in the photo. */
export interface Sight {
  readonly sizePx: number;
  readonly css?: string;
}

/** A photo of the code that the page shows, or of any other drawing. */
export async function photoOf(page: Page, { sizePx, css = '' }: Sight, drawing?: string): Promise<Handed> {
  const code = drawing ?? (await page.locator('.share-code').evaluate((svg) => svg.outerHTML));
  const camera = await page.context().newPage();
  await camera.setViewportSize({ width: sizePx * 2, height: Math.round(sizePx * 1.5) });
  await camera.setContent(
    `<body style="margin:0;height:100vh;display:grid;place-items:center;background:#3b4048;overflow:hidden">
      <style>svg{width:${sizePx}px;height:${sizePx}px;fill:#000}.share-ground{fill:#fff}</style>
      <div style="${css}">${code}</div></body>`,
  );
  const buffer = await camera.screenshot({ type: 'jpeg', quality: 80 });
  await camera.close();
  return { name: 'photo.jpg', mimeType: 'image/jpeg', buffer };
}

/** Brings in files and photos, and waits until they are read. */
export async function bring(page: Page, ...files: readonly Handed[]): Promise<void> {
  await page.getByLabel(englishPlan('share.choose')).setInputFiles([...files]);
  await page.getByText(englishPlan('share.read-all', { count: files.length })).waitFor();
  await page.locator('.share-in[aria-busy="false"]').waitFor();
}

/** What was brought in, as it is told, one after another. */
export const told = async (page: Page): Promise<readonly string[]> =>
  (await page.locator('.share-brought > li').allInnerTexts()).map((text) => text.replace(/\s+/g, ' '));

export const fileOf = (name: string, text: string): Handed => ({
  name,
  mimeType: 'application/json',
  buffer: Buffer.from(text),
});

/** A QR code of any text, drawn by another program than the app's. */
export async function drawingOf(text: string): Promise<string> {
  const wasm = readFileSync(createRequire(import.meta.url).resolve('zxing-wasm/writer/zxing_writer.wasm'));
  prepareZXingModule({ overrides: { wasmBinary: wasm.buffer.slice(0) as ArrayBuffer } });
  const { svg } = await writeBarcode(text, { format: 'QRCode' });
  // It stands there in points, with nothing behind it.
  const [, size] = /<svg width="(\d+)"/.exec(svg) ?? [];
  return svg.slice(svg.indexOf('<svg')).replace('<svg ', `<svg viewBox="0 0 ${size} ${size}" style="background:#fff" `);
}
