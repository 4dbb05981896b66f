// 3D models as the app hands them out, and their triangles as other readers see them.

import type { Locator, Page } from 'playwright-core';
import { english, englishPlan } from './words.ts';

/** Presses a button of "Save as 3D model" within `scope`, and takes the file. */
export async function savedModel(
  page: Page,
  scope: Locator,
  format: 'stl' | 'glb',
): Promise<{ readonly name: string; readonly bytes: Uint8Array }> {
  const saving = page.waitForEvent('download');
  await buttonOf(scope, format).press('Enter');
  const download = await saving;
  const chunks: Buffer[] = [];
  for await (const chunk of await download.createReadStream()) chunks.push(chunk as Buffer);
  return { name: download.suggestedFilename(), bytes: new Uint8Array(Buffer.concat(chunks)) };
}

/** Presses one while what writes the file cannot come, and waits until that is told. */
export async function modelNotHere(scope: Locator): Promise<void> {
  await buttonOf(scope, 'stl').click();
  await scope.getByText(english('frame.not-here-what')).waitFor();
}

const buttonOf = (scope: Locator, format: 'stl' | 'glb'): Locator =>
  scope
    .getByRole('group', { name: englishPlan('model.save') })
    .getByRole('button', { name: englishPlan(`model.${format}`), exact: true });
