// The Challenge screen, as a teacher uses it: a copy with one rule changed, a slip mended after groups have built, units,
// what is refused, and a challenge that goes and comes back.

import { demoClass, demoText } from '@cairnmark/demo';
import { decode, encode } from '@cairnmark/formats';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { onCard } from './tools/card.ts';
import { copyChallenge, fold, openChallenge, openFolds, row } from './tools/challenge.ts';
import { allKept, goTo, openClass, openScreen, reload, savedClass } from './tools/classes.ts';
import { openApp } from './tools/open-app.ts';
import { english, englishPlan, englishTalk } from './tools/words.ts';

const record = async (page: Page) => {
  const decoded = decode((await savedClass(page)).text, 'class');
  if (!decoded.ok) throw new RangeError(JSON.stringify(decoded.issues));
  return decoded.value.value;
};

const button = (page: Page, name: Parameters<typeof englishPlan>[0]) =>
  page.getByRole('button', { name: (englishPlan as (key: string) => string)(name), exact: true });

it('rules that groups have built under are read only; a copy with one of them changed is two taps', async () => {
  const page = await openApp();
  await openChallenge(page);
  await page.getByText(englishPlan('challenge.locked')).waitFor();
  expect(await page.locator('.chal-rules').locator('input, select').first().isDisabled()).toBe(true);
  expect(await page.locator('.chal-rules button:visible').count()).toBe(0);
  // A label decides nothing: it comes and goes all the same.
  await openFolds(page, 'labels');
  await button(page, 'challenge.add-label').click();
  const takeOut = { name: englishPlan('challenge.take-out', { name: englishPlan('challenge.new-label') }) };
  await page.getByRole('button', takeOut).click();
  await page.getByRole('button', takeOut).waitFor({ state: 'detached' });
  await copyChallenge(page);
  await page.keyboard.type('Taller Light');
  await row(page, 'Exactly 5 pieces').getByLabel(englishPlan('challenge.comparison')).selectOption('at-least');
  const { challenges } = await record(page);
  expect(challenges.map(({ name }) => name).slice(0, 2)).toEqual(['Tall Light', 'Taller Light']);
  expect(
    challenges.map(({ requirements: [rule] }) => rule?.kind === 'measured' && rule.comparison).slice(0, 2),
  ).toEqual(['exactly', 'at-least']);
});

it('a slip is mended in a copy with the builds: the first results stay, those of the copy follow the rule', async () => {
  const page = await openApp();
  await openChallenge(page);
  await button(page, 'challenge.copy-with-builds').click();
  await page.getByText(englishPlan('challenge.copied')).waitFor();
  await row(page, 'Height').getByLabel(englishPlan('challenge.row-points'), { exact: true }).fill('3');
  await page.keyboard.press('Enter');
  await allKept(page);
  await reload(page);
  await page.getByText(englishPlan('challenge.copied')).waitFor();
  const after = await record(page);
  expect(after.day.weights).toEqual({ 'tall-light-2': 0 });
  await openScreen(page, 'score');
  await onCard(page);
  // 37.9 cm: 37 whole centimetres, at 3 points each.
  expect(await page.locator('.card-head').innerText()).toContain('111');
});

it('what is typed in inches is kept in mm, and what makes no sense is told beside its row', async () => {
  const page = await openApp();
  await openChallenge(page);
  await copyChallenge(page);
  const height = row(page, 'Height');
  await height.getByLabel(englishPlan('challenge.per')).fill('1 in');
  await page.keyboard.press('Enter');
  await height.getByLabel(englishPlan('challenge.floor')).fill('9');
  await height.getByLabel(englishPlan('challenge.cap')).fill('4');
  await page.keyboard.press('Enter');
  await height.getByText('The most points (4) are fewer than the least points (9).').waitFor();
  await page
    .locator('.chal-aloud > .chal-part')
    .filter({ hasText: '1 point for every 2.54 cm, rounded down, at least 9 points' })
    .waitFor();
  await page.getByRole('button', { name: english('frame.settings') }).click();
  await page.getByRole('button', { name: english('units.in'), exact: true }).click();
  await page.keyboard.press('Escape');
  expect(await height.getByLabel(englishPlan('challenge.per')).inputValue()).toBe('1');
  await openFolds(page, 'gaps');
  await fold(page, 'gaps').getByLabel(englishPlan('challenge.slack')).fill('1');
  await page.keyboard.press('Enter');
  await fold(page, 'gaps')
    .getByText(/^1 is too large: .* in is the most\. I kept/)
    .waitFor();
  expect((await record(page)).challenges[1]?.points[0]).toMatchObject({ per: 25.4, floorPoints: 9 });
});

it('a ready challenge is added with the kit, taken out, and put back', async () => {
  const page = await openApp();
  await openChallenge(page);
  await button(page, 'challenge.add').click();
  await page.getByRole('button', { name: /^Largest courtyard/ }).click();
  await page.locator('.chal-name input:focus').waitFor();
  await button(page, 'challenge.remove').click();
  await page.getByText('Largest courtyard is taken out.').waitFor();
  await page.locator('.chal-undo button:focus').waitFor();
  expect((await record(page)).challenges).toHaveLength(3);
  await button(page, 'challenge.put-back').click();
  await page.locator('.chal-top [aria-pressed="true"]').filter({ hasText: 'Largest courtyard' }).waitFor();
  const [kit, added] = (await record(page)).challenges.flatMap((one, k) => (k % 3 === 0 ? [one.kit] : []));
  expect(added).toEqual(kit);
  // A played one asks twice.
  await page.locator('.chal-top').getByRole('button', { name: 'Tall Light', exact: true }).click();
  await button(page, 'challenge.remove').click();
  await button(page, 'challenge.remove-all').click();
  await page.getByText(englishPlan('challenge.goes-sure')).waitFor();
  await button(page, 'challenge.remove-sure').click();
  await page.getByText('Tall Light is taken out.').waitFor();
  expect((await record(page)).attempts.some(({ challenge }) => challenge === 'tall-light')).toBe(false);
});

it('the best possible build is worked out when asked, and groups are told a part of it', async () => {
  const page = await openApp();
  await openChallenge(page);
  await openFolds(page, 'best');
  await page.getByRole('button', { name: englishTalk('best.find'), exact: true }).click();
  // Five pieces of 80 mm; nothing of the kit is higher.
  await page.getByText(englishTalk('best.tallest', { value: '40.0 cm' })).waitFor();
  await page.getByText(englishTalk('best.any')).waitFor();
  await page.getByLabel(englishTalk('best.show')).check();
  await allKept(page);
  expect((await record(page)).challenges.map(({ bestShown }) => bestShown)).toEqual([true, undefined, undefined]);
  await openScreen(page, 'score');
  await onCard(page);
  // 37.9 of 40 cm are 94.75 %, told in steps of 5.
  await page.getByText(englishTalk('best.percent-about', { percent: 90 })).waitFor();
});

it('a long search for the best build says how far it is, and is stopped', async () => {
  const page = await openApp();
  const demo = JSON.parse(demoText);
  const must = { kind: 'measured', consequence: { kind: 'must' } };
  // Sixteen of 96 pieces, all steady to 3 degrees: more orders than the search may try.
  demo.challenges[0].requirements.splice(
    0,
    1,
    { ...must, id: 'many', measure: 'pieces', comparison: 'at-most', limit: 16 },
    { ...must, id: 'steady', measure: 'stands-to', comparison: 'at-least', limit: Math.PI / 60 },
  );
  await openClass(page, JSON.stringify(demo));
  await openScreen(page, 'challenge');
  await openFolds(page, 'best');
  const work = page.getByRole('button', { name: englishTalk('best.find'), exact: true });
  await work.click();
  await page.getByText(/^Trying towers: [1-9]/).waitFor();
  await page.getByRole('button', { name: englishTalk('best.stop'), exact: true }).click();
  await page.getByText(englishTalk('best.stopped')).waitFor();
  await work.waitFor();
});

it('where points decide, groups are told a part of the points that were looked at, not of a tower', async () => {
  const page = await openApp();
  const demo = demoClass();
  const challenges = demo.challenges.map((one) => ({ ...one, bestShown: true }));
  await openClass(page, encode('class', { ...demo, challenges }));
  await goTo(page, 'Puffins', 'Harbour Wall');
  await openScreen(page, 'score');
  // Courtyard, perimeter and marks are beyond the search: 13 of the 29 points for volume are 44.8 %, rounded down.
  await page.getByText(englishTalk('best.percent-points', { percent: 44, measures: 'volume' })).waitFor();
});
