// Every sheet for the demo class and for challenges that are ready to run: in both languages, on both papers, in both prints.

import { demoClass } from '@cairnmark/demo';
import type { Challenge, ClassRecord } from '@cairnmark/engine';
import { READY_IDS, READY_KINDS, readyChallengeFor, readyKit } from '@cairnmark/engine';
import { rulerOf } from '@cairnmark/geometry';
import type { SheetData, SheetId, SheetWords } from '@cairnmark/print';
import { lacking, makeSheet, PAPER_SIZES, SHEETS, writePdf } from '@cairnmark/print';
import type { SupplyRule } from '@cairnmark/scoring';
import type { Language } from '@cairnmark/words';
import { LANGUAGES, planWords, printWords, screenWords, wordsFor } from '@cairnmark/words';
import { describe, expect, it } from 'vitest';
import { ROOT, readText } from '../../tools/files.ts';

const IDS = Object.values(SHEETS).map(({ id }) => id);

/** Every key that was said. */
const said = new Set<string>();

function wordsOf(language: Language): SheetWords {
  const printed = printWords(language);
  const say: typeof printed.say = (key, ...values) => {
    said.add(key);
    return printed.say(key, ...values);
  };
  return {
    words: wordsFor(language),
    printed: { ...printed, say },
    plan: planWords(language),
    screen: screenWords(language),
  };
}

const GAME: SupplyRule = {
  ends: { kind: 'time', seconds: 300 },
  handOver: 'once-it-lies',
  dropped: 'must-be-fetched',
};

/** With a game in which the pieces are earned, and points for them. */
const withGame = (challenge: Challenge): Challenge => ({
  ...challenge,
  supply: GAME,
  requirements: [...challenge.requirements, { id: 'earned', kind: 'only-earned', consequence: { kind: 'must' } }],
  points: [
    // Judged in steps of two marks, where anything is.
    ...challenge.points.map((row) => (row.measure.startsWith('judged:') ? { ...row, per: 2 } : row)),
    { id: 'faces', measure: 'earned:faces', points: 1, per: 1, rounding: 'none' },
    { id: 'sets', measure: 'earned:full-sets', points: 10, per: 1, rounding: 'none', capPoints: 10 },
  ],
});

/** A code of 29 squares a side, and four of quiet ground: its look does not matter here. */
const CODE = Array.from({ length: 37 }, (_, y) => Array.from({ length: 37 }, (__, x) => (x * y) % 3 === 1));

const dataOf = (
  record: ClassRecord,
  challenge: Challenge,
  words: SheetWords,
  look: Pick<SheetData, 'paper' | 'print'>,
): SheetData => {
  const ruler = rulerOf(challenge.ruler);
  const cards = record.groups.map(({ name }) => ({ group: name, word: 'KAVURE', qr: CODE }));
  return {
    record,
    challenge,
    // As the app does: millimetres are the divisions of a ruler that is numbered in centimetres.
    ruler: ruler.id === 'mm' ? { ...ruler, unit: 'cm' } : ruler,
    pupils: 27,
    netPages: 8,
    cards,
    ...look,
    words,
  };
};

/** Pages of every sheet that the class has something for. */
const pagesOf = (data: SheetData): readonly (readonly [id: SheetId, pages: number | string])[] =>
  IDS.filter((id) => lacking(id, data) === null).map((id) => {
    const made = makeSheet(id, data);
    return [id, made.ok ? made.value.length : JSON.stringify(made.issues)];
  });

/** Six kinds a page for young pupils; all else is one page. */
const onePage = (ids: readonly SheetId[], kinds: number) =>
  ids.map((id) => [id, id === 'measure-young' ? Math.ceil(kinds / 6) : 1]);

describe.each(LANGUAGES)('sheets of the demo class, %s', (language) => {
  const words = wordsOf(language);
  const record = demoClass(language);
  const challenges = [...record.challenges, ...record.challenges.slice(-1).map(withGame)];

  it.each(PAPER_SIZES)('are one page each on %s, with its table for young pupils on three', (paper) => {
    // All on one paper, now this and now that; on the other the fullest alone.
    const seen = (paper === 'a4') === (language === 'en') ? challenges : challenges.slice(-1);
    for (const challenge of seen) {
      const data = dataOf(record, challenge, words, { paper, print: 'usual' });
      const ids = IDS.filter((id) => lacking(id, data) === null);
      expect(pagesOf(data)).toEqual(onePage(ids, challenge.kit.kinds.length));
    }
  });

  it.each(PAPER_SIZES)('fit in large print too, on %s', (paper) => {
    for (const challenge of challenges.slice(-1)) {
      const counts = pagesOf(dataOf(record, challenge, words, { paper, print: 'large' })).map(([, pages]) => pages);
      expect(counts.filter((pages) => typeof pages !== 'number' || pages > 5)).toEqual([]);
    }
  });

  it.each(READY_IDS)('for the ready challenge %s are one page each on Letter, the shorter paper', (id) => {
    // Each is seen in both units and with and without a game, now in one language and now in the other.
    const turn = READY_IDS.indexOf(id) + LANGUAGES.indexOf(language);
    const units = turn % 2 === 0 ? 'cm' : 'in';
    const names = Object.fromEntries(READY_KINDS.map((kind) => [kind, words.words.names.solids['rectangular-prism']]));
    // Bought for three groups, so that some pieces do not go round.
    const kit = readyKit('Kit', names as Record<(typeof READY_KINDS)[number], string>, 3, units);
    const ready = readyChallengeFor(id, words.words.names.ready[id], kit, null, { units });
    const data = dataOf(record, turn % 4 < 2 ? withGame(ready) : ready, words, { paper: 'letter', print: 'usual' });
    const ids = IDS.filter((sheet) => lacking(sheet, data) === null);
    expect(pagesOf(data)).toEqual(onePage(ids, kit.kinds.length));
  });
});

it('every text of the sheets has been said', () => {
  // What a kit of prisms and one of balls alone cannot tell.
  const challenge = demoClass().challenges[0]!;
  for (const kinds of [['cube', 'tri-prism'], ['ball']]) {
    const kit = { ...challenge.kit, kinds: challenge.kit.kinds.filter(({ id }) => kinds.includes(id)) };
    const counted = { ...challenge, kit, counting: 'flat-only' as const };
    makeSheet('riddle-key', dataOf(demoClass(), counted, wordsOf('en'), { paper: 'a4', print: 'usual' }));
  }
  const files = ['cards', 'lesson', 'materials', 'measuring', 'records', 'riddles', 'rules', 'sheets'];
  const keys = files.flatMap((file) =>
    [...readText(ROOT, `packages/words/src/en/print/${file}.ts`).matchAll(/'(print\.[\w+-]+)':/g)].map(
      ([, key]) => key,
    ),
  );
  expect(keys.length).toBeGreaterThan(100);
  expect(keys.filter((key) => key === undefined || !said.has(key))).toEqual([]);
});

it('a whole class of sheets is the same bytes twice', () => {
  const bytes = (): string => {
    const record = demoClass();
    const data = dataOf(record, withGame(record.challenges[0]!), wordsOf('en'), { paper: 'a4', print: 'usual' });
    const pages = IDS.flatMap((id) => {
      const made = makeSheet(id, data);
      return made.ok ? made.value : [];
    });
    const pdf = writePdf(pages, 'Sheets', 'en');
    return pdf.ok ? Buffer.from(pdf.value).toString('latin1') : '';
  };
  const [first, second] = [bytes(), bytes()];
  expect(first.length).toBeGreaterThan(10_000);
  expect(second === first).toBe(true);
});
