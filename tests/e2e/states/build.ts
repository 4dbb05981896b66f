// States of Build: every door, and everything that the strip under the scene can say.

import { newTry, row, tapKinds, through, tool } from '../tools/building.ts';
import { goTo, openDemo } from '../tools/classes.ts';
import { english } from '../tools/words.ts';
import type { State } from './state.ts';

export const build: readonly State[] = [
  { name: 'build', go: openDemo },
  {
    name: 'build-empty',
    go: async (page) => {
      await openDemo(page);
      await newTry(page);
    },
  },
  {
    name: 'build-steady',
    go: async (page) => {
      await openDemo(page);
      await newTry(page);
      await tapKinds(page, 'cube', 'cube', 'cube');
    },
  },
  {
    name: 'build-picked',
    go: async (page) => {
      await openDemo(page);
      await row(page, 2).click();
    },
  },
  {
    name: 'build-why',
    go: async (page) => {
      await openDemo(page);
      await page.getByRole('button', { name: english('verdict.show-why') }).click();
    },
  },
  {
    name: 'build-falls',
    go: async (page) => {
      await openDemo(page);
      await goTo(page, 'Eiders');
    },
  },
  {
    name: 'build-wobbly',
    go: async (page) => {
      await openDemo(page);
      await goTo(page, 'Terns', 'Narrow Rock');
    },
  },
  {
    name: 'build-too-close',
    go: async (page) => {
      await openDemo(page);
      await goTo(page, 'Gannets', 'Narrow Rock');
      await page.getByRole('button', { name: english('verdict.show-why') }).click();
    },
  },
  {
    name: 'build-working',
    atWork: true,
    device: {
      before: () => {
        // A worker that never answers.
        Worker.prototype.postMessage = () => undefined;
      },
    },
    go: openDemo,
  },
  {
    name: 'build-rule-broken',
    go: async (page) => {
      await openDemo(page);
      await newTry(page);
      await tapKinds(page, 'cube', 'cube', 'cube', 'cube', 'cube', 'cube');
    },
  },
  {
    name: 'build-not-predicted',
    go: async (page) => {
      await openDemo(page);
      await newTry(page);
      await tapKinds(page, 'cube', 'cube');
      await row(page, 1).click();
      await page.getByRole('button', { name: english('held.taped') }).click();
    },
  },
  {
    name: 'build-numbers',
    go: async (page) => {
      await openDemo(page);
      await newTry(page);
      await through(page, 'numbers');
      await tapKinds(page, 'cube', 'cone');
      await page.getByLabel(english('numbers.height')).fill('9,3');
      await page.getByRole('button', { name: english('numbers.add-reading') }).click();
    },
  },
  {
    name: 'build-lay-out-above',
    go: async (page) => {
      await openDemo(page);
      await goTo(page, 'Harbour Wall');
      await through(page, 'lay');
      await page.getByRole('button', { name: english('view.above') }).click();
    },
  },
  {
    name: 'build-keys',
    go: async (page) => {
      await openDemo(page);
      await page.getByRole('button', { name: english('build.keys') }).click();
    },
  },
  {
    name: 'build-moved',
    go: async (page) => {
      await openDemo(page);
      await row(page, 5).click();
      await tool(page, english('tool.right')).click();
    },
  },
  {
    name: 'build-no-space',
    device: {
      before: () => {
        // A browser without any drawing in space.
        HTMLCanvasElement.prototype.getContext = () => null;
      },
    },
    go: openDemo,
  },
];
