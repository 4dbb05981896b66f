// Scores as a table for a spreadsheet: one line a build, and one for a group of which none counts. Units stand in the
// header; a cell without a value is empty.

import type { ClassRecord, ClassScore, Report } from '@cairnmark/engine';
import type { Cell } from '@cairnmark/formats';
import { csvText } from '@cairnmark/formats';
import type { Unit } from '@cairnmark/geometry';
import { exactSum } from '@cairnmark/scoring';
import type { TerminalWords } from '@cairnmark/words';
import type { Board, BoardLine } from './boards.ts';
import { boardsOf } from './boards.ts';

export function scoreCsv(record: ClassRecord, score: ClassScore, words: TerminalWords): string {
  const boards = boardsOf(record, score, words);
  const titles = factTitles(boards, words);
  const header = [
    words.say('column.challenge'),
    words.say('column.group'),
    words.say('column.attempt'),
    words.say('column.place'),
    words.say('column.why'),
    words.capital(words.names.measures.points),
    ...titles.values(),
    words.say('column.stands'),
    words.say('column.own'),
  ];
  const facts = [...titles.keys()];
  return csvText([
    header,
    ...boards.flatMap((board) => board.lines.flatMap((line) => rowsOf(line, board, facts, words))),
  ]);
}

const UNIT_NAMES: Readonly<Record<Unit, string>> = {
  mm: 'mm',
  mm2: 'mm²',
  mm3: 'mm³',
  rad: '°',
  s: 's',
  count: '',
  ratio: '',
};

/** Fact id to title, in the order of the reports; criteria and kinds of piece may differ by challenge. */
function factTitles(boards: readonly Board[], words: TerminalWords): ReadonlyMap<string, string> {
  const titles = new Map<string, string>();
  for (const board of boards) {
    for (const { id, unit } of board.reports.flatMap(({ facts }) => facts)) {
      const name = words.capital(board.words.plainLabel(id));
      if (!titles.has(id)) titles.set(id, UNIT_NAMES[unit] === '' ? name : `${name} (${UNIT_NAMES[unit]})`);
    }
  }
  return titles;
}

/** All builds of the group; place and reason stand beside the one that counts, and the others say that it does. */
function rowsOf(
  { standing, report: counting }: BoardLine,
  board: Board,
  facts: readonly string[],
  words: TerminalWords,
): readonly Cell[][] {
  const own: readonly (Report | null)[] = board.reports.filter(({ group }) => group === standing.group);
  const reasons = board.words.out(standing.out, counting, board.challenge.requirements);
  const why = reasons === '' ? null : reasons;
  const otherCounts = counting === null ? null : words.say('score.another-counts');
  return (counting === null ? [...own, null] : own).map((report) => [
    board.challenge.name,
    board.reader.groupName(standing.group),
    report?.attempt ?? null,
    report === counting ? standing.place : null,
    report === counting ? why : otherCounts,
    report?.total ?? null,
    ...facts.map((fact) => factCell(report, fact)),
    standsCell(report, words),
    report === null || report.own.length === 0 ? null : exactSum(report.own.map(({ points }) => points)),
  ]);
}

/** Tilts in degrees: a spreadsheet is read by people. */
function factCell(report: Report | null, id: string): number | null {
  const fact = report?.facts.find((one) => one.id === id);
  if (fact === undefined || fact.value === null) return null;
  return fact.unit === 'rad' ? (180 / Math.PI) * fact.value : fact.value;
}

/** What the sums say. */
const standsCell = (report: Report | null, words: TerminalWords): string | null =>
  report === null || report.stability === null ? null : words.names.stands[report.stability.verdict];
