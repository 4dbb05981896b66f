// The app from one end to the other, for the ways to run it: what one of them left out is found missing here.

import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { newTry, number, tapKinds, through, verdict, whyLines } from './building.ts';
import { onCard } from './card.ts';
import { allKept, goTo, openScreen } from './classes.ts';
import { inNode, needsLargeSolver } from './in-node.ts';
import { english, spanish } from './words.ts';

const FORT = { challenge: 'Harbour Wall', group: 'Fulmars', id: 'harbour-wall-fulmars-1120' } as const;

/** On Build of the demo class: a new tower of the group at work, its verdict, its card, its place. */
export async function buildsAndScores(page: Page): Promise<void> {
  await newTry(page);
  await through(page, 'stack');
  await tapKinds(page, 'cube', 'cuboid');
  expect(await verdict(page)).not.toBe('');
  expect(await number(page, english('read.height'))).toMatch(/\d cm/);
  await openScreen(page, 'score');
  await onCard(page);
  await openScreen(page, 'board');
  await page.locator('.board table').first().waitFor();
  await allKept(page);
}

/** On Build: a fort that only the large solver judges whole is judged here as in Node. */
export async function judgesFort(page: Page): Promise<void> {
  expect(needsLargeSolver(FORT.id), 'the fort asks for the large solver').toBe(true);
  await goTo(page, FORT.challenge, FORT.group);
  expect(await whyLines(page)).toEqual(inNode(FORT.id).lines);
}

/** Every screen that has a tab; ends on Build. */
export async function opensEveryScreen(page: Page): Promise<void> {
  for (const screen of ['class', 'challenge', 'kit', 'print', 'supply', 'record', 'score', 'board', 'build'] as const) {
    await openScreen(page, screen);
    // Its words have come too, and are no excuse.
    await page.locator('main h1').first().waitFor();
    expect(await page.getByText(english('frame.not-here')).count(), screen).toBe(0);
    // Its worker has come, too.
    if (screen === 'print') await page.locator('img.print-sheet').waitFor();
  }
}

/** Ends in Spanish. */
export async function speaksSpanish(page: Page): Promise<void> {
  await page.getByRole('button', { name: english('frame.settings') }).click();
  await page.getByRole('button', { name: english('language.es') }).click();
  await page.getByRole('heading', { name: spanish('frame.settings') }).waitFor();
  await page.keyboard.press('Escape');
  await page.getByRole('link', { name: spanish('tab.board'), exact: true }).waitFor();
}
