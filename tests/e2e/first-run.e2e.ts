// A group that never saw the app: from Start to a tower with its points, by what the screens say, in 90 seconds.

import { expect, it } from 'vitest';
import { number, tapKinds, verdict } from './tools/building.ts';
import { onCard } from './tools/card.ts';
import { onScreen } from './tools/classes.ts';
import { openApp, TABLET } from './tools/open-app.ts';
import { english, spanish } from './tools/words.ts';

it('a new group gets to a scored tower in seven taps, and is told each of them', async () => {
  const page = await openApp({ viewport: TABLET, touch: true });
  const main = page.locator('.btn.main');
  // One button on Start stands out, and it is the one for a group.
  expect(await main.allInnerTexts()).toEqual([english('start.first-go')]);
  await main.tap();
  await onScreen(page, 'build');
  expect(await page.locator('.who-now').innerText()).toContain(`${english('start.our-group')}, try 1`);
  for (const step of ['first.one', 'first.two', 'first.three'] as const) {
    await page.getByText(english(step)).waitFor();
  }
  await tapKinds(page, 'cube', 'cuboid', 'cylinder', 'tri-prism', 'sq-pyramid');
  await verdict(page);
  expect(await number(page, english('read.height'))).toMatch(/\d cm/);
  await page.getByRole('button', { name: english('build.show') }).tap();
  await onScreen(page, 'score');
  await onCard(page);
  expect(Number(await page.locator('.card-total').first().innerText().then(Number.parseFloat))).toBeGreaterThan(20);
});

it('the first tower in Spanish begins with a group named in Spanish', async () => {
  const page = await openApp({ locale: 'es-MX' });
  await page.getByRole('button', { name: spanish('start.first-go') }).click();
  await page.locator('.who-now').getByText(spanish('start.our-group')).waitFor();
});
