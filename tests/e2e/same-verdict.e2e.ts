// The same build has the same verdict and the same numbers in the browser's worker as in Node.

import { demoClass } from '@cairnmark/demo';
import type { Report } from '@cairnmark/engine';
import { evaluate, piecesUsed, USUAL_LIMITS, unitOf } from '@cairnmark/engine';
import { rulerOf, TILT_BANDS } from '@cairnmark/geometry';
import { classReader, wordsFor } from '@cairnmark/words';
import { expect, it } from 'vitest';
import { HIGHS } from '../reference/highs.ts';
import { number, verdict } from './tools/building.ts';
import { goTo, openDemo } from './tools/classes.ts';
import { openApp } from './tools/open-app.ts';
import { english } from './tools/words.ts';

const RECORD = demoClass();

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
  await page.getByRole('button', { name: english('verdict.show-why') }).click();
  const lines = await page.locator('.why > ul > li').allInnerTexts();
  expect(lines).toEqual(told.lines);
});

function inNode(id: string) {
  const attempt = RECORD.attempts.find((one) => one.id === id)!;
  const challenge = RECORD.challenges.find((one) => one.id === attempt.challenge)!;
  const group = RECORD.groups.find((one) => one.id === attempt.group)!;
  const result = evaluate(attempt, { challenge, group, events: [] }, { solver: HIGHS, limits: USUAL_LIMITS });
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  const ruler = { ...rulerOf(challenge.ruler), unit: 'cm' as const };
  const words = wordsFor('en').inClass(classReader(challenge, RECORD.groups, { ruler, bands: TILT_BANDS, unitOf }));
  const kinds = piecesUsed(attempt.layout);
  const stability = result.value.stability!;
  const shown = (measure: string, { facts }: Report): string => {
    const fact = facts.find((one) => one.id === measure)?.predicted;
    return fact?.status === 'measured' ? words.amount(measure, fact.value, fact.tolerance) : '–';
  };
  return {
    title: words.stabilityBrief(stability, kinds).title,
    lines: words.stability(stability, kinds).lines,
    height: shown('height', result.value),
    volume: shown('volume', result.value),
  };
}
