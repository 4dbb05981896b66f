import type { EditIssue } from '@cairnmark/editing';
import { screenWords } from '@cairnmark/words';
import { expect, it } from 'vitest';
import type { Refusal } from './drag-refusal.ts';
import { refusalOf } from './drag-refusal.ts';

const issue = (code: EditIssue['code']): EditIssue => ({ code, path: [], details: {} });

it.each([
  [['none-left'], 'none-left'],
  [['overlaps'], 'no-room'],
  [['overlaps', 'none-left'], 'none-left'],
  [['position-too-far'], 'off-table'],
  [['kind-unknown'], 'not-here'],
  [[], 'not-here'],
] as const)('%j is told as %s', (codes, told) => {
  expect(refusalOf(codes.map(issue))).toBe(told);
});

const REFUSALS: readonly Refusal[] = ['off-table', 'none-left', 'no-room', 'not-here'];

it.each(['en', 'es'] as const)('a label in the scene has at most four words: %s', (language) => {
  for (const why of REFUSALS) expect(screenWords(language).say(`drag.${why}`).split(' ').length).toBeLessThanOrEqual(4);
});
