// The same build has the same verdict and the same numbers in the browser's worker as in Node.

import { expect, it } from 'vitest';
import { number, verdict, whyLines } from './tools/building.ts';
import { goTo, openDemo } from './tools/classes.ts';
import { inNode } from './tools/in-node.ts';
import { openApp } from './tools/open-app.ts';
import { english } from './tools/words.ts';

/** A tower, one that falls, and forts, of which one is judged by the large solver. */
it.each([
  ['Tall Light', 'Gannets', 'tall-light-gannets-0926'],
  ['Tall Light', 'Eiders', 'tall-light-eiders-0935'],
  ['Harbour Wall', 'Puffins', 'harbour-wall-puffins-1108'],
  ['Harbour Wall', 'Eiders', 'harbour-wall-eiders-1128'],
])('%s of the %s', async (challenge, group, attempt) => {
  const page = await openApp();
  await openDemo(page);
  await goTo(page, challenge, group);
  const told = inNode(attempt);
  await expect.poll(() => number(page, english('read.height'))).toBe(told.height);
  expect(await number(page, english('read.volume'))).toBe(told.volume);
  // A broken rule takes the word's place, but not the figure's.
  expect([told.title, english('verdict.one-broken')]).toContain(await verdict(page));
  expect(await whyLines(page)).toEqual(told.lines);
});
