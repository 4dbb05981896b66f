// What holds for every state of every screen, in the light and in the dark. States are added in states/. An ordinary run
// takes a fifth of them, by its seed; the long run all.
//
//   CAIRNMARK_LONG=1 npm run e2e -- every-state -t board    those whose name holds "board"

import { expect, it } from 'vitest';
import { inTurn } from '../tools/share.ts';
import { STATES } from './states/all.ts';
import { atRest, settled } from './states/state.ts';
import { axeFaults } from './tools/axe.ts';
import { tabStops } from './tools/keyboard.ts';
import { overflowing, smallTargets } from './tools/layout.ts';
import { NARROW, openApp } from './tools/open-app.ts';

it.each(inTurn(STATES, 5, 'states'))(
  '$name: axe finds nothing, fingers and keys reach everything, and it fits 320 px',
  async (state) => {
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
    expect.soft(await axeFaults(page), 'axe, dark').toEqual([]);

    await page.setViewportSize(NARROW);
    await atRest(page, state);
    expect.soft(await overflowing(page), 'reflow (WCAG 1.4.10)').toEqual([]);
    expect.soft(await axeFaults(page), 'axe, narrow').toEqual([]);
  },
);
