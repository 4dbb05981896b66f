// The pages of sheets and nets, with the words of the language they are printed in.

import type { Challenge } from '@cairnmark/engine';
import type { Result } from '@cairnmark/geometry';
import { makeSolid } from '@cairnmark/geometry';
import type { GroundSheet, Page, PrintIssue, SheetData, SheetId } from '@cairnmark/print';
import { goreSheets, groundPages, lacking, makeSheet, netSheets, SHEETS } from '@cairnmark/print';
import type { PrintWords } from '@cairnmark/words';
import { loadPlanWords, loadPrintWords, loadScreenWords, loadWords } from '@cairnmark/words';
import type { MadeNets, MadeSheet, NetsAsk, PrintQuestion, PrintQuestions, SheetsAsk } from './print-questions.ts';
import type { Progress } from './worker-client.ts';

export async function printAnswerTo(
  question: PrintQuestion,
  progress: Progress,
): Promise<PrintQuestions[keyof PrintQuestions]['answer']> {
  switch (question.topic) {
    case 'sheets':
      return sheetsOf(question.ask);
    case 'nets':
      return netsOf(question.ask, progress);
  }
}

async function sheetsOf(ask: SheetsAsk): Promise<readonly MadeSheet[]> {
  const { record, paper, language } = ask;
  const challenge = record.challenges.find(({ id }) => id === ask.challenge);
  if (challenge === undefined) throw new RangeError(`no challenge ${ask.challenge}`);
  const [words, printed, plan, screen] = await Promise.all([
    loadWords(language),
    loadPrintWords(language),
    loadPlanWords(language),
    loadScreenWords(language),
  ]);
  const data: SheetData = {
    record,
    challenge,
    ruler: ask.ruler,
    pupils: ask.pupils,
    netPages: ask.netPages,
    // Words to get in by come with a class server.
    cards: [],
    paper,
    print: ask.print,
    words: { words, printed, plan, screen },
  };
  const ids = (Object.keys(SHEETS) as SheetId[]).filter((id) => lacking(id, data) !== 'table-cards');
  return [
    ...ids.map((id) => ({
      id,
      name: printed.say(`print.sheet-${id}`),
      ...pagesOrWhy(makeSheet(id, data), printed),
    })),
    ...goresOf(challenge, ask, printed),
    ...GROUND.map((sheet) => ({
      id: `ground-${sheet}` as const,
      name: printed.say(`print.ground-${sheet}`),
      ...pagesOrWhy(groundPages(sheet, paper, printed), printed),
    })),
  ];
}

/** For a class that buys no balls; nothing where the kit has none. */
function goresOf({ kit }: Challenge, { paper, record }: SheetsAsk, printed: PrintWords): readonly MadeSheet[] {
  const balls = kit.kinds.flatMap(({ name, solid }) => {
    const made = makeSolid(solid);
    return made.ok && made.value.id === 'sphere' ? [{ name, radiusMm: made.value.sizes['radius'] ?? 0 }] : [];
  });
  const made = balls.map((ball) =>
    pagesOrWhy(goreSheets({ ...ball, paper, invented: record.invented }, printed), printed),
  );
  if (made.length === 0) return [];
  const names = balls.map(({ name }) => name).join(', ');
  return [
    {
      id: 'gores',
      name: printed.say('print.gores', { kind: names }),
      pages: made.flatMap(({ pages }) => pages),
      told: made.flatMap(({ told }) => told),
    },
  ];
}

const GROUND: readonly GroundSheet[] = ['one-page', 'four-pages'];

function pagesOrWhy(pages: Result<readonly Page[], PrintIssue>, words: PrintWords): Pick<MadeSheet, 'pages' | 'told'> {
  return pages.ok ? { pages: pages.value, told: [] } : { pages: [], told: sentences(pages.issues, words) };
}

/** Each once: a wide name stands in several places. */
const sentences = (issues: readonly PrintIssue[], words: PrintWords): readonly string[] => [
  ...new Set(issues.map((issue) => words.issue(issue))),
];

async function netsOf({ language, kinds, ruler, ...order }: NetsAsk, progress: Progress): Promise<MadeNets> {
  const [words, printed] = await Promise.all([loadWords(language), loadPrintWords(language)]);
  const solids = kinds.flatMap(({ spec, ...kind }) => {
    const solid = makeSolid(spec);
    return solid.ok ? [{ ...kind, solid: solid.value }] : [];
  });
  const sheets = netSheets({ ...order, kinds: solids }, printed, (done, most) => {
    progress(done, most);
    return true;
  });
  if (!sheets.ok) return { pages: [], copies: [], told: sentences(sheets.issues, printed) };
  if (sheets.value === null) return { pages: [], copies: [], told: [] };
  const nameOf = (id: string): string => kinds.find((kind) => kind.id === id)?.name ?? id;
  return {
    pages: sheets.value.pages,
    copies: sheets.value.copies,
    told: sheets.value.leftOut.map(({ kind, issue }) => printed.leftOut(nameOf(kind), issue, words, ruler)),
  };
}
