// A try leaves one device and comes in on another, without a server: by the camera and by a file.

import { demoClass } from '@cairnmark/demo';
import type { Attempt } from '@cairnmark/engine';
import { decode, encode, encodeCode } from '@cairnmark/formats';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { addReading, head, onCard } from './tools/card.ts';
import { goTo, openDemo, openScreen, savedClass } from './tools/classes.ts';
import { openApp, TABLET } from './tools/open-app.ts';
import { bring, drawingOf, fileOf, openShare, photoOf, told } from './tools/sharing.ts';
import { english, englishPlan } from './tools/words.ts';

const [first] = demoClass().attempts as [Attempt];

/** The demo, on the Score card of its first group. */
async function deviceOnCard(): Promise<Page> {
  const page = await openApp({ viewport: TABLET });
  await openDemo(page);
  await openScreen(page, 'score');
  await onCard(page);
  return page;
}

async function attemptsOn(page: Page): Promise<readonly Attempt[]> {
  const read = decode((await savedClass(page)).text, 'class');
  if (!read.ok) throw new RangeError('the class was refused');
  return read.value.value.attempts;
}

const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();

it('a try comes in by a photo of its code, to the last digit, and a second time changes nothing', async () => {
  const from = await deviceOnCard();
  await goTo(from, english('frame.new-try'));
  await openScreen(from, 'score');
  await onCard(from);
  await addReading(from, '41.3');
  await openShare(from);
  const photo = await photoOf(from, { sizePx: 500 });
  await from.keyboard.press('Escape');
  const sent = (await attemptsOn(from)).at(-1);

  const to = await deviceOnCard();
  await openShare(to);
  await bring(to, photo);
  expect((await told(to))[0]).toMatch(/^Puffins, Tall Light, try 3 .* Height by the ruler: 41.3 cm\. .*Take it in$/);
  await press(to, englishPlan('share.take'));
  await to.getByText(englishPlan('share.taken', { number: 3 })).waitFor();
  await bring(to, photo);
  await to.getByText(englishPlan('share.here', { number: 3 })).waitFor();
  await press(to, englishPlan('share.show'));
  await onCard(to);
  expect(await head(to)).toContain(english('score-card.which', { challenge: 'Tall Light', number: 3 }));
  expect(await attemptsOn(to)).toEqual([...demoClass().attempts, sent]);
});

it('photos are read as hands take them: aslant, turned, blurred; a picture of nothing is told', async () => {
  const page = await deviceOnCard();
  await goTo(page, 'Eiders', 'Harbour Wall');
  await onCard(page);
  await openShare(page);
  const sights = [
    { sizePx: 700, css: 'transform: perspective(1400px) rotateY(28deg) rotateX(10deg) rotateZ(7deg)' },
    { sizePx: 600, css: 'transform: rotate(38deg); filter: blur(1.5px) contrast(0.6) brightness(1.2)' },
  ];
  const photos = [];
  for (const sight of sights) photos.push(await photoOf(page, sight));
  await bring(page, ...photos);
  const here = englishPlan('share.here', { number: 1 });
  expect((await told(page)).map((text) => text.includes(here))).toEqual([true, true]);
  await bring(page, await photoOf(page, { sizePx: 100 }, '<p>no code</p>'));
  expect((await told(page))[0]).toContain(englishPlan('share.no-code'));
});

it('codes that are spoiled, from elsewhere or newer are refused in a sentence, and nothing changes', async () => {
  const page = await deviceOnCard();
  await openShare(page);
  const code = encodeCode({ attempt: first, prints: { rules: 1, kit: 2, sizes: 3 } });
  const text = code.ok ? code.value : '';
  const spoiled = text.slice(0, 40) + (text[40] === 'A' ? 'B' : 'A') + text.slice(41);
  const drawn = async (coded: string) => photoOf(page, { sizePx: 500 }, await drawingOf(coded));
  await bring(page, await drawn(spoiled), await drawn('https://school.example'), await drawn('CAIRN9:00'));
  const [misread, others, newer] = await told(page);
  expect(misread).toContain('A part of this code was not read as it stands.');
  expect(others).toContain('This code is not from Cairnmark.');
  expect(newer).toContain('A newer Cairnmark made this code: version 9; the newest known here is 1.');
  await page.keyboard.press('Escape');
  expect(await attemptsOn(page)).toEqual(demoClass().attempts);
});

it('files come in beside what is here, for the group that is chosen; what this class cannot hold is refused', async () => {
  const page = await deviceOnCard();
  await openShare(page);
  const readAgain: Attempt = { ...first, observed: { heightReadingsMm: [268] } };
  const strange: Attempt = { ...readAgain, id: 'tall-light-gulls-1', group: 'gulls' };
  const unheard: Attempt = { ...first, id: 'a', layout: { kind: 'numbers-only', pieces: ['brick'] } };
  const files = [readAgain, strange, unheard].map((one) => fileOf(`${one.id}.json`, encode('attempt', one)));
  await bring(page, ...files);
  const [again, ofGulls, bricks] = [0, 1, 2].map((k) => page.locator('.share-brought > li').nth(k));
  const take = englishPlan('share.take');

  await again!.getByText(englishPlan('share.beside')).waitFor();
  await again!.getByText(englishPlan('share.rules-not-told')).waitFor();
  await again!.getByRole('button', { name: take }).click();
  await again!.getByText(englishPlan('share.taken', { number: 2 })).waitFor();

  await ofGulls!.getByText(englishPlan('share.group-unknown', { group: 'gulls' })).waitFor();
  await ofGulls!.getByLabel(englishPlan('share.group-choose')).selectOption('Terns');
  await ofGulls!.getByRole('button', { name: take }).click();
  await ofGulls!.getByText(/It is here now, as try 1\./).waitFor();

  await bricks!.getByRole('button', { name: take }).click();
  await bricks!.getByText('The kit has no kind "brick".').waitFor();

  await page.keyboard.press('Escape');
  expect(await attemptsOn(page)).toEqual([
    ...demoClass().attempts,
    { ...readAgain, id: 'tall-light-puffins-3' },
    { ...strange, group: 'terns' },
  ]);
});
