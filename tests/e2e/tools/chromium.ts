// The one Chromium of a run, headless; it draws in software, so that WebGL works on any machine.

import type { LaunchOptions } from 'playwright-core';
import { findBrowser, NONE, thisMachine } from '../../tools/browser.mjs';
import { ROOT } from '../../tools/files.ts';

/**
 * How playwright-core is to start it. Drawn in software, smooth edges take more than half of the time: only who looks at
 * the pictures asks for them. Throws an Error with a sentence when there is no browser.
 */
export function howToLaunch(edges: 'smooth' | 'plain'): LaunchOptions {
  const executablePath = findBrowser(thisMachine(ROOT));
  if (executablePath === undefined) throw new Error(NONE);
  return {
    executablePath,
    headless: true,
    args: edges === 'smooth' ? ARGUMENTS : [...ARGUMENTS, '--webgl-antialiasing-mode=none'],
  };
}

/** This machine under a name that browsers do not trust as they trust it under its own: as a laptop in a school network. */
export const SCHOOL_HOST = 'school.test';

const ARGUMENTS = [
  '--no-sandbox',
  '--use-gl=angle',
  '--use-angle=swiftshader',
  '--enable-unsafe-swiftshader',
  // The page itself is put together without the graphics chip that there is none of: more than twice as fast.
  '--disable-gpu-compositing',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-dev-shm-usage',
  `--host-resolver-rules=MAP ${SCHOOL_HOST} 127.0.0.1`,
  '--force-color-profile=srgb',
];
