// Help in place: on every screen each control is explained by a sentence, while somebody asks.

import type { Locator, Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { onCard } from './tools/card.ts';
import { goTo, openDemo, openScreen } from './tools/classes.ts';
import { favour, openFair, useFirstRule } from './tools/fair.ts';
import { openApp } from './tools/open-app.ts';
import { choose, clickOn, kindId, openTrace, photo, TRUTH, tapsOf } from './tools/tracing.ts';
import { english, englishPlan, englishTalk, englishTrace, spanish } from './tools/words.ts';

const ask = async (scope: Locator, text = english('frame.help')): Promise<void> =>
  scope.getByRole('button', { name: text, exact: true }).press('Enter');

/**
 * Controls in sight that no sentence is about: none names them, their group, or the heading or fold that they stand in,
 * and there is none in their own part of Build.
 */
const unexplained = (scope: Locator): Promise<string[]> =>
  scope.evaluate((root) => {
    const plain = (text: string | null | undefined): string => (text ?? '').replace(/\s+/g, ' ').trim();
    const named = [...root.querySelectorAll('.help-list dt')].map((one) => plain(one.textContent));
    const labelOf = (one: Element | null): string =>
      plain(
        one?.getAttribute('aria-label') ??
          document.getElementById(one?.getAttribute('aria-labelledby') ?? '')?.textContent,
      );
    return [...root.querySelectorAll('button, a[href], input, select, summary')]
      .filter((one) => one.checkVisibility() && !one.matches('.help-button'))
      .filter((one) => {
        const label = one instanceof HTMLInputElement || one instanceof HTMLSelectElement ? one.labels?.[0] : null;
        const part = one.closest('.shelf, .list, .verdict, .go, .rules, .scene, .read');
        if (part?.querySelector('.help') ?? false) return false;
        const about = [
          plain(one.textContent),
          plain(label?.textContent),
          labelOf(one),
          labelOf(one.closest('[role="group"]')),
          plain(one.closest('section')?.querySelector('h2')?.textContent),
          ...[...root.querySelectorAll('details')]
            .filter((fold) => fold.contains(one))
            .map((fold) => plain(fold.querySelector('summary')?.textContent)),
        ];
        return !named.some((name) => about.some((text) => text.startsWith(name)));
      })
      .map((one) => plain(one.textContent) || one.outerHTML.slice(0, 80));
  });

const main = (page: Page): Locator => page.locator('main');

it('every control of the Score card has its sentence', async () => {
  const page = await openApp();
  await openDemo(page);
  await goTo(page, 'Fulmars', 'Harbour Wall');
  await openScreen(page, 'score');
  await onCard(page);
  await page.getByText(english('score-card.real'), { exact: true }).click();
  await ask(main(page));
  const names = await page.locator('.card-dis').allInnerTexts();
  // The name of a measure unfolds its line: told once, for all of them.
  await page.locator('.help-list dt', { hasText: english('score-card.what') }).waitFor();
  expect((await unexplained(main(page))).filter((name) => !names.includes(name))).toEqual([]);
  await ask(main(page));
  expect(await page.locator('.help').count()).toBe(0);
});

it('every control of the Board, of the settings and of the choice of a group has its sentence', async () => {
  const page = await openApp();
  await openDemo(page, 'board');
  await page.locator('.rank-table').waitFor();
  await ask(main(page));
  // A group's name asks why it has its place: told once, for all of them.
  const left = (await unexplained(main(page))).filter((name) => !/, Why \S+\?$/.test(name));
  expect(left).toEqual([]);
  await main(page)
    .getByRole('button', { name: english('board.graphs'), exact: true })
    .press('Enter');
  await page.locator('.graph-drawing svg').first().waitFor();
  expect(await unexplained(main(page)), 'the graphs').toEqual([]);
  for (const name of ['frame.settings', 'frame.change-group'] as const) {
    await page.getByRole('button', { name: english(name) }).click();
    const dialog = page.getByRole('dialog', { name: english(name) });
    await ask(dialog);
    const rest = (await unexplained(dialog)).filter((text) => text !== english('frame.close'));
    expect(rest, name).toEqual([]);
    await page.keyboard.press('Escape');
  }
});

it('every control of Fair points has its sentence, with points found, the class ranked anew and a riddle', async () => {
  const page = await openApp();
  await openFair(page);
  await favour(page, 'Hexagonal prism');
  await useFirstRule(page);
  for (const fold of await page.locator('.fair-fold > summary').all()) await fold.press('Enter');
  await page.getByRole('button', { name: englishTalk('lab.new-riddle') }).press('Enter');
  await page.locator('.fair-examples li').first().waitFor();
  await ask(main(page));
  expect(await unexplained(main(page))).toEqual([]);
});

it('every control of the Challenge screen has its sentence, those in its folds too', async () => {
  const page = await openApp();
  await openDemo(page, 'challenge');
  await page.getByRole('button', { name: englishPlan('challenge.copy'), exact: true }).click();
  for (const fold of await page.locator('.chal-fold').all()) await fold.locator('summary').click();
  await ask(main(page));
  expect(await unexplained(main(page))).toEqual([]);
});

it('every control of Trace it has its sentence, with a piece in hand and for the height', async () => {
  const page = await openApp();
  await openTrace(page);
  await choose(page, photo('top'));
  await page.locator('.trace-detail summary').click();
  const [piece] = TRUTH.pieces;
  await page.locator(`[data-trace-kind="${kindId(0)}"]`).click();
  for (const tap of piece === undefined ? [] : tapsOf(piece)) await clickOn(page, tap);
  await page.getByRole('button', { name: englishTrace('trace.it-fits') }).waitFor();
  await ask(main(page));
  const doors = await page.locator('.rules .seg button').allInnerTexts();
  const left = async (): Promise<string[]> => (await unexplained(main(page))).filter((name) => !doors.includes(name));
  expect(await left()).toEqual([]);
  await page.getByRole('button', { name: englishTrace('trace.it-fits') }).click();
  await page.getByRole('button', { name: englishTrace('trace.to-side') }).click();
  await choose(page, photo('side'));
  expect(await left()).toEqual([]);
});

it('every part of Build has its sentences, by touch and in Spanish', async () => {
  const page = await openApp({ locale: 'es-MX', touch: true });
  await page.getByRole('button', { name: spanish('start.demo-open') }).tap();
  await page.locator('.list [data-piece]').first().tap();
  await page.getByRole('button', { name: spanish('frame.help'), exact: true }).tap();
  const told = await page.locator('.help-list dt').allInnerTexts();
  const tools = await page.locator('.pad button').allInnerTexts();
  for (const tool of [...tools, spanish('build.undo'), spanish('build.keys')]) expect.soft(told).toContain(tool.trim());
  await page.getByText(spanish('help.lay-over')).waitFor();
  // The sentences leave room for what they explain.
  const size = (place: Locator) => place.boundingBox().then((box) => box ?? { width: 0, height: 0 });
  expect((await size(page.getByRole('button', { name: spanish('build.show') }))).width).toBeGreaterThan(120);
  expect((await size(page.locator('.shelf ul'))).height).toBeGreaterThan(100);
});
