// Which pages leave the printer, how many, and in which order.

import { demoClass } from '@cairnmark/demo';
import type { Page } from '@cairnmark/print';
import { expect, it } from 'vitest';
import type { MadeSheet } from '../../workers/print-questions.ts';
import { inOrder, netPagesOf, pagesIn, printParts } from './parts.ts';
import { firstSettings, toggled } from './settings.ts';

const page = (): Page => ({ paper: { size: 'a4', orientation: 'portrait' }, marks: [] });
const [RULES_1, RULES_2, PLAN, NET_1, NET_2] = [page(), page(), page(), page(), page()];
const MADE: readonly MadeSheet[] = [
  { id: 'lesson-plan', name: 'Lesson plan', pages: [PLAN], told: [] },
  { id: 'rules', name: 'Rule sheet', pages: [RULES_1, RULES_2], told: [] },
  { id: 'game', name: 'Game sheet', pages: [], told: ['no game'] },
];
const RECORD = demoClass();
const SETTINGS = { ...firstSettings(RECORD, RECORD.challenges[0]!), pupils: 7 };

it('a whole copy of a sheet comes after the other, as many as the class needs', () => {
  const parts = printParts(MADE, null, 'Nets', RECORD, SETTINGS);
  const groups = RECORD.groups.length;
  expect(pagesIn(parts)).toBe(1 + 2 * groups);
  const pages = inOrder(parts);
  expect(pages).toHaveLength(1 + 2 * groups);
  expect(pages.slice(0, 4)).toEqual([PLAN, RULES_1, RULES_2, RULES_1]);
  expect(pages.slice(1).map((one) => one === RULES_1)).toEqual(
    Array.from({ length: 2 * groups }, (_, k) => k % 2 === 0),
  );
});

it('masters of nets are needed so often, and once where they are copied by hand', () => {
  const nets = { pages: [NET_1, NET_2], copies: [3, 1], told: [] };
  const masters = { ...SETTINGS, arrange: 'masters' } as const;
  const needed = printParts([], nets, 'Nets', RECORD, masters);
  expect(inOrder(needed).map((one) => one === NET_1)).toEqual([true, false, true, true]);
  const once = printParts([], nets, 'Nets', RECORD, { ...masters, copies: 'one' });
  expect(inOrder(once)).toEqual([NET_1, NET_2]);
  expect(pagesIn(once)).toBe(2);
});

it('a set on sheets of its own is printed whole, set after set', () => {
  const nets = { pages: [NET_1, NET_2], copies: [1, 1], told: [] };
  const parts = printParts([], nets, 'Nets', RECORD, { ...SETTINGS, sets: 3 });
  expect(inOrder(parts)).toEqual([NET_1, NET_2, NET_1, NET_2, NET_1, NET_2]);
  const stock = printParts([], nets, 'Nets', RECORD, { ...SETTINGS, sets: 3, pieces: 'stock' });
  expect(pagesIn(stock)).toBe(2);
});

it('how many sheets the nets of a group take is told of sets alone, and never by pages of other settings', () => {
  const value = { pages: Array.from({ length: 7 }, page), copies: [], told: [] };
  const sets = { ...SETTINGS, arrange: 'mixed', sets: 3 } as const;
  expect(netPagesOf({ value, working: false }, { ...sets, arrange: 'sets' })).toBe(7);
  expect(netPagesOf({ value, working: false }, sets)).toBe(3);
  expect(netPagesOf({ value, working: true }, { ...sets, sets: 1 })).toBeNull();
  expect(netPagesOf({ value, working: false }, { ...sets, pieces: 'stock' })).toBeNull();
  expect(netPagesOf({ value, working: false }, { ...sets, arrange: 'masters' })).toBeNull();
  expect(netPagesOf({ value: null, working: false }, sets)).toBeNull();
});

it('young pupils get the short table and deep tabs', () => {
  const young = firstSettings(RECORD, { ...RECORD.challenges[0]!, gradePreset: 'grades-2-3', ruler: 'inch' });
  expect([young.chosen.has('measure-young'), young.tabDepthMm, young.paper]).toEqual([true, 10, 'letter']);
  const without = toggled(young.chosen, 'nets');
  expect([without.has('nets'), toggled(without, 'nets').has('nets'), young.chosen.has('nets')]).toEqual([
    false,
    true,
    true,
  ]);
});
