// Classes in the app, as a person gets them in and out: the demo, a file, the file again.

import type { Locator, Page } from 'playwright-core';
import { english } from './words.ts';

export type Screen =
  | 'class'
  | 'challenge'
  | 'kit'
  | 'print'
  | 'supply'
  | 'build'
  | 'record'
  | 'score'
  | 'board'
  | 'fair';

/** From Start: opens the demo class, on Build or on another screen; then without waiting until Build stands. */
export async function openDemo(page: Page, screen: Screen = 'build'): Promise<void> {
  await page.getByRole('button', { name: english('start.demo-open') }).click();
  if (screen === 'build') await onScreen(page, screen);
  else await openScreen(page, screen);
}

/** From Start: opens a class file; ends on Build. */
export async function openClass(page: Page, text: string): Promise<void> {
  await chooseFile(page, 'class.json', text);
  await onScreen(page, 'build');
}

/** From Start: hands the app a file, whatever comes of it. */
export async function chooseFile(page: Page, name: string, text: string): Promise<void> {
  const file = { name, mimeType: 'application/json', buffer: Buffer.from(text) };
  await page.getByLabel(english('start.file-choose')).setInputFiles(file);
}

/** Goes by its tab to a screen. */
export async function openScreen(page: Page, screen: Screen): Promise<void> {
  await page.getByRole('link', { name: english(`tab.${screen}`), exact: true }).click();
  await onScreen(page, screen);
}

/** Waits until a screen stands. */
export async function onScreen(page: Page, screen: string): Promise<void> {
  await page.locator(`nav a[href$="/${screen}"][aria-current="page"]`).waitFor();
  await page.locator('h1').first().waitFor({ state: 'attached' });
}

/** Goes to Start by the name at the top. */
export async function openStart(page: Page): Promise<void> {
  await page.getByRole('link', { name: english('frame.brand') }).click();
  await page.getByRole('heading', { name: english('start.title') }).waitFor();
}

/** The class as the app saves it: the file's name and its text. The settings are open afterwards no more. */
export async function savedClass(page: Page): Promise<{ name: string; text: string }> {
  await page.getByRole('button', { name: english('frame.settings') }).click();
  const dialog = page.getByRole('dialog', { name: english('frame.settings') });
  const { name, bytes } = await downloaded(page, dialog.getByRole('button', { name: english('frame.class-file') }));
  await page.keyboard.press('Escape');
  return { name, text: bytes.toString('utf8') };
}

/** What a button saves: the file's name and its bytes. */
export async function downloaded(page: Page, button: Locator): Promise<{ name: string; bytes: Buffer }> {
  const saving = page.waitForEvent('download');
  await button.click();
  const download = await saving;
  const chunks: Buffer[] = [];
  for await (const chunk of await download.createReadStream()) chunks.push(chunk as Buffer);
  return { name: download.suggestedFilename(), bytes: Buffer.concat(chunks) };
}

/** Reloads, and waits until the screen stands again. */
export async function reload(page: Page): Promise<void> {
  await page.reload();
  await page.locator('h1').first().waitFor({ state: 'attached' });
}

/** Waits until the browser has kept everything. */
export async function allKept(page: Page): Promise<void> {
  await page.locator('[data-saved="kept"]').waitFor({ state: 'attached' });
}

/** Goes to a group, a challenge or a try by the dialog at the top. */
export async function goTo(page: Page, ...names: readonly string[]): Promise<void> {
  await page.getByRole('button', { name: english('frame.change-group') }).click();
  const dialog = page.getByRole('dialog', { name: english('frame.change-group') });
  for (const name of names) await dialog.getByRole('button', { name, exact: true }).click();
  await page.keyboard.press('Escape');
}
