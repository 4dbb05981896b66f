// What axe-core finds wrong with a page as it stands: WCAG 2.0 to 2.2, levels A and AA, and its list of best practice.

import { join } from 'node:path';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';
import { ROOT } from '../../tools/files.ts';

const AXE = join(ROOT, 'node_modules/axe-core/axe.min.js');
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** One line a fault: the rule, the place, and what is wrong there. Empty when axe finds nothing. */
export async function axeFaults(page: Page): Promise<string[]> {
  await page.addScriptTag({ path: AXE });
  const { violations }: AxeResults = await page.evaluate(
    (tags) => window.axe.run(document, { runOnly: { type: 'tag', values: tags }, resultTypes: ['violations'] }),
    TAGS,
  );
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(
      ({ target, failureSummary = '' }) => `${id} at ${target.join(' ')}: ${failureSummary.replace(/\s+/g, ' ')}`,
    ),
  );
}

declare global {
  interface Window {
    readonly axe: { run(context: Document, options: object): Promise<AxeResults> };
  }
}
