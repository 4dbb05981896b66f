// What a page must never do, whatever is tested on it: print to the console, throw, leave a promise rejected, ask for a
// file that is not there, ask another host for anything, crash, or open a box of the browser.

import type { Page } from 'playwright-core';

/** The page's faults so far; the list goes on growing. `address`: where the app is served. */
export function watch(page: Page, address: string): readonly string[] {
  const faults: string[] = [];
  page.on('console', (line) => {
    if (isIcon(line.location().url) || line.text() === NOT_KEPT || SOFTWARE_DRAWING.test(line.text())) return;
    faults.push(`console ${line.type()}: ${line.text()}`);
  });
  page.on('requestfailed', (request) => {
    const why = request.failure()?.errorText ?? '';
    // A page that is left gives up what it asked for.
    if (why !== 'net::ERR_ABORTED' && !isIcon(request.url())) faults.push(`not answered (${why}): ${request.url()}`);
  });
  page.on('pageerror', (error) => faults.push(`thrown: ${error instanceof Error ? error.message : String(error)}`));
  page.on('crash', () => faults.push('the page crashed'));
  page.on('dialog', (box) => {
    faults.push(`box of the browser: ${box.message()}`);
    void box.dismiss();
  });
  page.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(address) && !/^(blob|data):/.test(url)) faults.push(`asks another host: ${url}`);
  });
  page.on('response', (response) => {
    if (response.status() >= 400) faults.push(`answered ${response.status()}: ${response.url()}`);
  });
  return faults;
}

/** What playwright-core prints itself on a device that is not to keep the app. */
const NOT_KEPT = 'Service Worker registration blocked by Playwright';

/** What the browser says of itself where it puts the drawing into the page without a graphics chip. */
const SOFTWARE_DRAWING = /^\[\.WebGL-0x[0-9a-f]+\]GL Driver Message .*GPU stall due to ReadPixels/;

/** The browser asks for the icon by itself, again and again, without network too. */
const isIcon = (url: string): boolean => url.endsWith('/icon.svg');
