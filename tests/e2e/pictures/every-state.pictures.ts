// One picture a state, size and scheme: "board-tall-light-1366x768-dark.png". The whole page, if it is longer than the window.

import { join } from 'node:path';
import { it } from 'vitest';
import { ROOT } from '../../tools/files.ts';
import { STATES } from '../states/all.ts';
import { atRest, settled } from '../states/state.ts';
import { CHROMEBOOK, openApp, PROJECTOR, TABLET } from '../tools/open-app.ts';

const FOLDER = join(ROOT, '.cache/screenshots');
const SIZES = [CHROMEBOOK, TABLET, PROJECTOR];
const SCHEMES = ['light', 'dark'] as const;

it.each(STATES)('$name', async (state) => {
  const { name, device, go } = state;
  const page = await openApp(device);
  await go(page);
  await settled(page, state);
  for (const size of SIZES) {
    await page.setViewportSize(size);
    for (const colorScheme of SCHEMES) {
      await page.emulateMedia({ colorScheme });
      await atRest(page, state);
      const path = join(FOLDER, `${name}-${size.width}x${size.height}-${colorScheme}.png`);
      await page.screenshot({ path, fullPage: true });
    }
  }
});
