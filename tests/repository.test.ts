// What holds for the repository as a whole. Each check answers with a list of faults; the list must be empty.

import { expect, it } from 'vitest';
import { docFaults } from './tools/check-docs.ts';
import { importFaults } from './tools/check-imports.ts';
import { nameFaults } from './tools/check-names.ts';
import { placeFaults } from './tools/check-places.ts';
import { ruleFaults } from './tools/check-rules.ts';
import { sentenceFaults } from './tools/check-sentences.ts';
import { ROOT } from './tools/files.ts';

it.each([
  ['imports follow the architecture', importFaults],
  ['packages use no clock, no chance and no console', nameFaults],
  ['sentences stand in packages/words', sentenceFaults],
  ['every rule of scoring is tested under its id', ruleFaults],
  ['paths and commands in the documents are there', docFaults],
  ['no line points at one machine or at a registry', placeFaults],
])('%s', (_, faultsIn) => {
  expect(faultsIn(ROOT)).toEqual([]);
});
