// What holds for every state of every screen, in the light and in the dark. States are added in states/. In an ordinary run
// axe looks at a third of them, by the run's seed, in the dark and at 320 px too; in the long run at all.
//
//   npm run e2e -- every-state -t board    those whose name holds "board"

import { expect, it } from 'vitest';
import { freshSeed, share } from '../tools/share.ts';
import { STATES } from './states/all.ts';
import type { State } from './states/state.ts';
import { atRest, settled } from './states/state.ts';
import { axeFaults } from './tools/axe.ts';
import { tabStops } from './tools/keyboard.ts';
import { overflowing, smallTargets } from './tools/layout.ts';
import { NARROW, openApp } from './tools/open-app.ts';

it.each(STATES)('$name: axe finds nothing, fingers and keys reach everything, and it fits 320 px', async (state) => {
  const { device, go } = state;
  const page = await openApp(device);
  await go(page);
  await settled(page, state);
  expect.soft(await axeFaults(page), 'axe, light').toEqual([]);
  expect.soft(await smallTargets(page), 'targets of 44 px (WCAG 2.5.5)').toEqual([]);
  const stops = await tabStops(page);
  expect.soft(stops.length, 'stops of Tab').toBeGreaterThan(0);
  expect
    .soft(
      stops.filter(({ fault }) => fault !== null),
      'focus seen (WCAG 2.4.7, 2.4.11)',
    )
    .toEqual([]);

  await page.emulateMedia({ colorScheme: 'dark' });
  await atRest(page, state);
  if (isInFull(state)) expect.soft(await axeFaults(page), 'axe, dark').toEqual([]);

  await page.setViewportSize(NARROW);
  await atRest(page, state);
  expect.soft(await overflowing(page), 'reflow (WCAG 1.4.10)').toEqual([]);
  if (isInFull(state)) expect.soft(await axeFaults(page), 'axe, narrow').toEqual([]);
});

/** Every state in the long run; in an ordinary one every third, those of the run's seed. */
function isInFull(state: State): boolean {
  const every = share(1, 3);
  return STATES.indexOf(state) % every === freshSeed('states in the dark and narrow') % every;
}
