// Before the browser tests: builds the app once, serves it, starts Chromium. All of it is taken down after the last test.

import { chromium } from 'playwright-core';
import type { TestProject } from 'vitest/node';
import { buildApp } from './build-app.ts';
import { howToLaunch } from './chromium.ts';
import { serveFolder } from './serve-folder.ts';

declare module 'vitest' {
  interface ProvidedContext {
    /** The folder of the built app. */
    readonly builtFolder: string;
    /** The address of the app; ends with a slash. */
    readonly appAddress: string;
    /** Where playwright-core reaches the browser. */
    readonly browserAddress: string;
  }
}

export default async function serveAndLaunch(project: TestProject): Promise<() => Promise<void>> {
  const folder = buildApp('e2e');
  const looksAtPictures = project.config.include.some((files) => files.includes('pictures'));
  const browser = await chromium.launchServer(howToLaunch(looksAtPictures ? 'smooth' : 'plain'));
  const site = await serveFolder(folder);
  project.provide('builtFolder', folder);
  project.provide('appAddress', site.address);
  project.provide('browserAddress', browser.wsEndpoint());
  return async () => {
    await browser.close();
    await site.close();
  };
}
