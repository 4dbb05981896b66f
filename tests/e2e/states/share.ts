// States of the ways in which a try leaves a device and comes in.

import { demoClass } from '@cairnmark/demo';
import type { Attempt } from '@cairnmark/engine';
import { encode } from '@cairnmark/formats';
import type { Page } from 'playwright-core';
import { onCard } from '../tools/card.ts';
import { goTo, openDemo, openScreen } from '../tools/classes.ts';
import { bring, fileOf, openShare } from '../tools/sharing.ts';
import { englishPlan } from '../tools/words.ts';
import type { State } from './state.ts';

const [first] = demoClass().attempts as [Attempt];
const READ_AGAIN: Attempt = { ...first, observed: { heightReadingsMm: [268, 270] } };

const shareOf = async (page: Page, ...names: readonly string[]): Promise<void> => {
  await openDemo(page);
  if (names.length > 0) await goTo(page, ...names);
  await openScreen(page, 'score');
  await onCard(page);
  await openShare(page);
};

const bringIn = (page: Page, ...attempts: readonly Attempt[]): Promise<void> =>
  bring(page, ...attempts.map((one) => fileOf(`${one.id}.json`, encode('attempt', one))));

export const share: readonly State[] = [
  { name: 'share-code', go: (page) => shareOf(page, 'Eiders', 'Harbour Wall') },
  {
    name: 'share-brought',
    go: async (page) => {
      await shareOf(page);
      await bringIn(page, READ_AGAIN, first, { ...READ_AGAIN, id: 'a', group: 'gulls' });
    },
  },
  {
    name: 'share-refused',
    go: async (page) => {
      await shareOf(page);
      const unheard: Attempt = { ...first, id: 'a', layout: { kind: 'numbers-only', pieces: ['brick'] } };
      await bring(page, fileOf('notes.json', '{'), fileOf('a.json', encode('attempt', unheard)));
      await page.getByRole('button', { name: englishPlan('share.take') }).click();
    },
  },
];
