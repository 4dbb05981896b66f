// For tests: a class that is ready to run, with what a sheet is made of.

import type { Challenge, ClassRecord, Group } from '@cairnmark/engine';
import { READY_KINDS, readyChallengeFor, readyKit } from '@cairnmark/engine';
import { rulerOf } from '@cairnmark/geometry';
import type { SupplyRule } from '@cairnmark/scoring';
import { planWords, printWords, screenWords, wordsFor } from '@cairnmark/words';
import type { Page } from '../page/page.ts';
import type { SheetData, SheetWords } from './data.ts';
import { makeSheet } from './make-sheet.ts';
import type { SheetId } from './sheet-kind.ts';

const NAMES = Object.fromEntries(READY_KINDS.map((id) => [id, `Piece ${id}`])) as Record<
  (typeof READY_KINDS)[number],
  string
>;

export const readyClass = (challenge: Partial<Challenge> = {}): Challenge => ({
  ...readyChallengeFor('tallest', 'Tallest', readyKit('Paper solids', NAMES, 6, 'cm'), null, {
    grade: 'grades-6-8',
    units: 'cm',
  }),
  ...challenge,
});

export function dataOf(challenge: Challenge, changes: Partial<SheetData> = {}): SheetData {
  return {
    record: recordOf(challenge, 6),
    challenge,
    ruler: { ...rulerOf(challenge.ruler), unit: 'cm' },
    pupils: 27,
    netPages: 7,
    cards: [],
    paper: 'a4',
    print: 'usual',
    words: sheetWords('en'),
    ...changes,
  };
}

export const recordOf = (challenge: Challenge, groups: number): ClassRecord => ({
  name: 'Class',
  invented: false,
  groups: Array.from({ length: groups }, (_, k): Group => ({ id: `g${k}`, name: `Crew ${k + 1}`, measured: {} })),
  challenges: [challenge],
  attempts: [],
  supplies: {},
  day: { kind: 'sum-of-points', placePoints: [], weights: {}, meanOfThosePresent: false },
});

export const sheetWords = (language: 'en' | 'es'): SheetWords => ({
  words: wordsFor(language),
  printed: printWords(language),
  plan: planWords(language),
  screen: screenWords(language),
});

export const GAME: SupplyRule = {
  ends: { kind: 'turns', turns: 7 },
  handOver: 'at-a-touch',
  dropped: 'lost-this-turn',
};

export function pagesOf(id: SheetId, data: SheetData): readonly Page[] {
  const made = makeSheet(id, data);
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  return made.value;
}

/** A line of writing each. */
export const textsOn = (pages: readonly Page[]): readonly string[] =>
  pages.flatMap(({ marks }) => marks.flatMap((mark) => (mark.kind === 'writing' ? [mark.text] : [])));

/** Why a sheet is refused, each code once. */
export const codesOf = (id: SheetId, data: SheetData): readonly string[] => {
  const made = makeSheet(id, data);
  return made.ok ? [] : [...new Set(made.issues.map(({ code }) => code))];
};
