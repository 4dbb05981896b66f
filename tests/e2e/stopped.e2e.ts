// Sums that somebody stopped: what is said, and the way to go on.

import { expect, it } from 'vitest';
import { verdict } from './tools/building.ts';
import { goTo, openDemo, openScreen } from './tools/classes.ts';
import { openApp } from './tools/open-app.ts';
import { english } from './tools/words.ts';

/** While `window.isHard` is set, a question is one of the hard ones: the worker says how far it is, and never answers. */
const hardSums = (): void => {
  const post = Worker.prototype.postMessage;
  Worker.prototype.postMessage = function (this: Worker, question: { readonly number: number }) {
    if (Reflect.get(window, 'isHard') !== true) return post.call(this, question);
    const data = { number: question.number, done: 1, most: 9 };
    setTimeout(() => this.onmessage?.(new MessageEvent('message', { data })));
  };
};

it.each([
  ['score', 'score-card.cancel', 'verdict.stopped'],
  ['board', 'board.stop', 'board.stopped'],
] as const)('%s says that it was stopped, and works it out when asked', async (screen, stop, stopped) => {
  const page = await openApp({ before: hardSums });
  await openDemo(page);
  await verdict(page);
  const sumsAre = (hard: boolean) => page.evaluate((isHard) => Reflect.set(window, 'isHard', isHard), hard);
  if (screen === 'score') {
    await openScreen(page, screen);
    // The tries of the others are asked about behind it, and have to be there for its place.
    await page
      .getByText(/^Place 1/)
      .first()
      .waitFor();
    await sumsAre(true);
    await goTo(page, 'Harbour Wall');
  } else {
    await sumsAre(true);
    await openScreen(page, screen);
  }
  const stopping = page.getByRole('button', { name: english(stop) });
  await stopping.waitFor();
  await sumsAre(false);
  await stopping.click();
  await page.getByText(english(stopped)).waitFor();
  await page.getByRole('button', { name: english('verdict.again') }).click();
  await page.locator(screen === 'board' ? '.rank-table' : '.card').waitFor();
  expect(await page.getByText(english(stopped)).count()).toBe(0);
});

it('build says that it was stopped, and not how the build before it stood', async () => {
  const page = await openApp({ before: hardSums });
  await openDemo(page);
  await verdict(page);
  await page.evaluate(() => Reflect.set(window, 'isHard', true));
  await page.locator('[data-kind="cube"]').click();
  await page.getByRole('button', { name: english('verdict.cancel'), exact: true }).click();
  await expect.poll(() => page.locator('.verdict h2').innerText()).toBe(english('verdict.stopped'));
  await page.evaluate(() => Reflect.set(window, 'isHard', false));
  await page.getByRole('button', { name: english('verdict.again'), exact: true }).click();
  expect(await verdict(page)).toBe(english('verdict.one-broken'));
});
