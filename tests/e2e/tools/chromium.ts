// The one Chromium of a run, headless; it draws in software, so that WebGL works on any machine.

import type { LaunchOptions } from 'playwright-core';
import { findBrowser, NONE, thisMachine } from '../../tools/browser.mjs';
import { ROOT } from '../../tools/files.ts';

/** How playwright-core is to start it. Throws an Error with a sentence when there is no browser. */
export function howToLaunch(): LaunchOptions {
  const executablePath = findBrowser(thisMachine(ROOT));
  if (executablePath === undefined) throw new Error(NONE);
  return { executablePath, headless: true, args: ARGUMENTS };
}

const ARGUMENTS = [
  '--no-sandbox',
  '--use-gl=angle',
  '--use-angle=swiftshader',
  '--enable-unsafe-swiftshader',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-dev-shm-usage',
  '--force-color-profile=srgb',
];
