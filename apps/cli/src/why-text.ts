// What separates two builds, for people: challenge by challenge, line by line.

import type { ClassRecord, Report } from '@cairnmark/engine';
import { changesSince, compareReports, isShown } from '@cairnmark/engine';
import type { Side, TerminalWords } from '@cairnmark/words';
import type { Board } from './boards.ts';
import { section } from './section.ts';

/** Two groups, by id, in every challenge in which an attempt of both counts. */
export function betweenGroups(
  boards: readonly Board[],
  [first, second]: readonly [string, string],
  { groups }: ClassRecord,
  words: TerminalWords,
): string {
  const nameOf = (group: string): string => groups.find(({ id }) => id === group)?.name ?? group;
  const names = { first: nameOf(first), second: nameOf(second) };
  const parts = boards.flatMap((board) => {
    const [one, other] = [first, second].map((group) => sideOf(board, group, nameOf(group)));
    if (one === null || other === null || one === undefined || other === undefined) return [];
    const lines = [
      words.say('score.order', { order: board.words.order(board.challenge.ranking) }),
      ...outLines(board, [first, second]),
      ...separating(board, one, other),
    ];
    return section(board.challenge.name, lines);
  });
  if (parts.length === 0) return words.say('why.nothing-in-common', names);
  return [words.say('why.title', names), ...parts].join('\n');
}

/** The last two tries of a group, in every challenge at which it has tried twice. */
export function betweenTries(
  boards: readonly Board[],
  group: string,
  { groups }: ClassRecord,
  words: TerminalWords,
): string {
  const name = groups.find(({ id }) => id === group)?.name ?? group;
  const parts = boards.flatMap((board) => {
    const tries = inTime(board.reports.filter((report) => report.group === group));
    const [before, after] = tries.slice(-2);
    if (before === undefined || after === undefined) return [];
    const tried = (report: Report): Side => ({
      name: words.say('why.try', { number: tries.indexOf(report) + 1 }),
      report,
    });
    const changes = changesSince(before, after).filter(({ fact }) => isShown(fact, board.challenge));
    return [
      ...section(board.challenge.name, [
        `${words.capital(tried(before).name)}: ${before.attempt}`,
        `${words.capital(tried(after).name)}: ${after.attempt}`,
        `${words.say('why.changes')}:`,
        ...changes.map((change) => `  ${board.words.change(change)}`),
        `${words.say('why.points')}:`,
        ...separating(board, tried(before), tried(after)).map((line) => `  ${line}`),
      ]),
    ];
  });
  if (parts.length === 0) return words.say('why.one-try', { group: name });
  return [words.say('why.tries', { group: name }), ...parts].join('\n');
}

function sideOf({ lines }: Board, group: string, name: string): Side | null {
  const report = lines.find(({ standing }) => standing.group === group)?.report ?? null;
  return report === null ? null : { name, report };
}

const separating = ({ challenge, words }: Board, first: Side, second: Side): readonly string[] =>
  words.why(compareReports(first.report, second.report, challenge), { challenge, first, second });

/** Why one of the two takes no place: the lines compare what was measured all the same. */
function outLines({ lines, reader, words, challenge }: Board, pair: readonly string[]): readonly string[] {
  return pair.flatMap((group) => {
    const line = lines.find(({ standing }) => standing.group === group);
    if (line === undefined || line.standing.out.length === 0) return [];
    const reason = words.out(line.standing.out, line.report, challenge.requirements);
    return [words.takesNoPlace(reader.groupName(group), reason)];
  });
}

/** From the earliest to the latest; at the same moment as they were entered. */
const inTime = (reports: readonly Report[]): readonly Report[] =>
  [...reports].sort((a, b) => Date.parse(a.at) - Date.parse(b.at));
