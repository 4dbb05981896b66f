// Scores for people: a board a challenge, who is not ranked and why, what people decided, then the day and what to know
// before reading it.

import type { ClassRecord, ClassScore } from '@cairnmark/engine';
import { POINTS_ID, unmeasuredLosses } from '@cairnmark/engine';
import type { RankingKey } from '@cairnmark/scoring';
import type { TerminalWords } from '@cairnmark/words';
import type { Board, BoardLine } from './boards.ts';
import { boardsOf, toleranceOf } from './boards.ts';
import { dayText } from './day-text.ts';
import { decisionLines } from './decision-lines.ts';
import { fallenLines, ownLines, pointsLines, ruleLines } from './points-text.ts';
import { supplyLines } from './supply-lines.ts';
import { tableText } from './table.ts';
import { warningLines } from './warning-lines.ts';

/** `rows`: with the points of every build that counts, row by row, own results and supplies. */
export function scoreText(record: ClassRecord, score: ClassScore, rows: boolean, words: TerminalWords): string {
  const head = record.invented ? [record.name, words.say('score.invented')] : [record.name];
  const boards = boardsOf(record, score, words);
  const parts = [
    `${head.join('\n')}\n`,
    ...boards.map((board) => boardText(board, record, rows, words)),
    ...(record.challenges.length > 1 ? [dayText(record, score, words)] : []),
    ...(score.warnings.length > 0
      ? [section(words.say('score.warnings'), warningLines(record, score, words)).join('')]
      : []),
  ];
  return parts.join('\n').trimEnd();
}

function boardText(board: Board, record: ClassRecord, rows: boolean, words: TerminalWords): string {
  const { challenge } = board;
  const ranked = board.lines.filter(({ standing }) => standing.place !== null);
  const out = board.lines.filter(({ standing }) => standing.place === null);
  const decisions = decisionLines(board, record.attempts);
  return [
    `${challenge.name}\n`,
    `${words.say('score.order', { order: board.words.order(challenge.ranking) })}\n`,
    ranked.length > 0 ? placesTable(ranked, board, words) : '',
    ...(board.reports.length === 0
      ? [`${words.capital(words.say('score.not-played'))}.\n`]
      : section(
          words.say('score.not-ranked'),
          out.map((line) => outLine(line, board)),
        )),
    ...section(words.say('score.decisions'), decisions),
    ...(rows ? rowSections(board, record, words) : []),
  ].join('');
}

function rowSections(board: Board, record: ClassRecord, words: TerminalWords): readonly string[] {
  const ranked = board.lines.filter(({ standing }) => standing.place !== null);
  return [
    ...section(
      words.say('score.rows'),
      ranked.flatMap((line) => buildLines(line, board, words)),
    ),
    ...section(
      words.say('score.own'),
      board.lines.flatMap((line) => ownResultLines(line, board)),
    ),
    ...section(words.say('score.supply'), supplyLines(board, record, words)),
  ];
}

/** "Puffins", and below it how each of its own results compares. */
function ownResultLines({ report, standing }: BoardLine, board: Board): readonly string[] {
  if (report === null || report.own.length === 0) return [];
  return [board.reader.groupName(standing.group), ...ownLines(report, board).map((line) => `  ${line}`)];
}

function section(title: string, lines: readonly string[]): readonly string[] {
  return lines.length > 0 ? [`${title}:\n`, ...lines.map((line) => `  ${line}\n`)] : [];
}

/** "Puffins (tall-light-puffins-0941)", and below it the points of that build. */
function buildLines({ report, standing }: BoardLine, board: Board, words: TerminalWords): readonly string[] {
  if (report === null) return [];
  const title = `${board.reader.groupName(standing.group)} (${report.attempt})`;
  return [title, ...pointsLines(report, board, words).map((line) => `  ${line}`)];
}

function placesTable(lines: readonly BoardLine[], board: Board, words: TerminalWords): string {
  const { first, tieBreaks } = board.challenge.ranking;
  const keys = [first, ...tieBreaks];
  const header = [
    words.say('column.place'),
    words.say('column.group'),
    ...keys.map(({ by }) => words.capital(board.words.label(by))),
    words.say('column.notes'),
  ];
  const rows = lines.map((line) => [
    words.ordinal(line.standing.place ?? 0),
    board.reader.groupName(line.standing.group),
    ...keys.map((key, k) => decidingValue(line, key, k, board, words)),
    [
      ...board.words.placeNotes(line.standing),
      ...attemptNotes(line, board, words),
      ...fallenNotes(line, board),
      ...openNotes(line, board),
      ...notKnownNotes(line, board, words),
    ].join('; '),
  ]);
  return tableText([header, ...rows], [0, ...keys.map((_, k) => k + 2)]);
}

/** Which of several attempts of the group counts. */
function attemptNotes({ standing }: BoardLine, { challenge, reports }: Board, words: TerminalWords): readonly string[] {
  const count = reports.filter(({ group }) => group === standing.group).length;
  return count < 2 ? [] : [words.say(`score.${challenge.attemptCounts}-of`, { count })];
}

/** That a ranked build fell, and counts all the same. */
const fallenNotes = ({ report }: BoardLine, board: Board): readonly string[] =>
  report === null ? [] : fallenLines(report, board);

/** Rules that nobody has judged yet, where the place may still go: a build must keep them, or pays points that decide. */
function openNotes({ report }: BoardLine, board: Board): readonly string[] {
  if (report === null) return [];
  const { first, tieBreaks } = board.challenge.ranking;
  const deciding = [first, ...tieBreaks].some(({ by }) => by === POINTS_ID) ? ['must', 'costs'] : ['must'];
  return ruleLines(
    report,
    board,
    ({ verdict, consequence }) => verdict === 'not-judged' && deciding.includes(consequence.kind),
  );
}

/** That points may have been lost by what was not measured: the place stands, the day has no points to add. */
function notKnownNotes({ report }: BoardLine, board: Board, words: TerminalWords): readonly string[] {
  const measures = report === null ? [] : unmeasuredLosses(report, board.challenge);
  const names = words.listed(measures.map(board.words.label));
  return measures.length === 0 ? [] : [words.say('score.points-not-known', { measures: names })];
}

/** A rounded value is exact; one that the ranking does not round is read like any measure. */
function decidingValue(
  { standing, report }: BoardLine,
  key: RankingKey,
  k: number,
  board: Board,
  words: TerminalWords,
): string {
  const value = standing.decidedBy[k]?.value ?? null;
  if (value === null) return words.say('score.none');
  return key.roundTo > 0
    ? board.words.roundedAmount(key.by, value, key.roundTo)
    : board.words.amount(key.by, value, toleranceOf(report, key.by));
}

function outLine({ standing, report }: BoardLine, { reader, words, challenge }: Board): string {
  const why = words.out(standing.out, report, challenge.requirements);
  return `${reader.groupName(standing.group)}: ${why}`;
}
