// States of the door "Trace it": no photo yet, a piece in hand under the magnifier, the height by the photo of the side, a photo
// to be taken again.

import type { Page } from 'playwright-core';
import { plain } from '../tools/photo-files.ts';
import { choose, clickOn, kindId, onPage, openTrace, photo, TRUTH, tapsOf, traceAbove } from '../tools/tracing.ts';
import { englishTrace } from '../tools/words.ts';
import type { State } from './state.ts';

const fits = (page: Page) => page.getByRole('button', { name: englishTrace('trace.it-fits'), exact: true });

export const trace: readonly State[] = [
  { name: 'trace', go: openTrace },
  {
    name: 'trace-above',
    go: async (page) => {
      await openTrace(page);
      await choose(page, photo('top'));
      const [first, second] = TRUTH.pieces;
      await page.locator(`[data-trace-kind="${kindId(0)}"]`).click();
      for (const tap of first === undefined ? [] : tapsOf(first)) await clickOn(page, tap);
      await fits(page).click();
      await page.locator(`[data-trace-kind="${kindId(1)}"]`).click();
      const [tap, next] = second === undefined ? [] : tapsOf(second);
      if (tap === undefined || next === undefined) return;
      await clickOn(page, tap);
      await page.mouse.move(...(await onPage(page, next)));
    },
  },
  {
    name: 'trace-fit',
    go: async (page) => {
      await openTrace(page);
      await choose(page, photo('top'));
      const piece = TRUTH.pieces.at(-1);
      await page.locator(`[data-trace-kind="${kindId(TRUTH.pieces.length - 1)}"]`).click();
      for (const tap of piece === undefined ? [] : tapsOf(piece)) await clickOn(page, tap);
      await fits(page).waitFor();
    },
  },
  {
    name: 'trace-shape',
    go: async (page) => {
      await openTrace(page);
      await choose(page, photo('top'));
      const { outline = [], outlineInTop = [] } = TRUTH.pieces[3] ?? {};
      await page.getByRole('button', { name: englishTrace('trace.shape') }).click();
      await page.getByLabel(englishTrace('trace.shape-plane')).fill(((outline[0]?.[2] ?? 0) / 10).toFixed(2));
      await page.keyboard.press('Enter');
      for (const corner of outlineInTop) await clickOn(page, corner);
      await page.getByRole('button', { name: englishTrace('trace.close') }).click();
      await fits(page).waitFor();
    },
  },
  {
    name: 'trace-side',
    go: async (page) => {
      await openTrace(page);
      await traceAbove(page);
      await choose(page, photo('side'));
      await clickOn(page, TRUTH.pieces[2]?.topInSide ?? [0, 0]);
    },
  },
  {
    name: 'trace-no-sheet',
    go: async (page) => {
      await openTrace(page);
      await choose(page, await plain(page, 1632, 1224, 'silver'));
    },
  },
];
