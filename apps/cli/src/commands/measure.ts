// measure: all facts of one build, each with its working; what counted as touching and as closed; rules and points.

import type { Attempt, ClassRecord, Report } from '@cairnmark/engine';
import { evaluate, needsSolver } from '@cairnmark/engine';
import type { Issue, Layout } from '@cairnmark/geometry';
import { SMALL_BUILD } from '@cairnmark/geometry';
import type { TerminalWords } from '@cairnmark/words';
import type { Call } from '../call.ts';
import type { ExitCode } from '../exit.ts';
import { WELL } from '../exit.ts';
import { furtherQuestions } from '../further-questions.ts';
import { givenClass } from '../given-class.ts';
import type { Io } from '../io.ts';
import { measureText } from '../measure-text.ts';
import { refuse, tell } from '../speak.ts';
import { tableText } from '../table.ts';
import { withSolver } from '../with-solver.ts';

export async function measure(
  { rest, attempt: id, without, tilt }: Call,
  words: TerminalWords,
  io: Io,
): Promise<ExitCode> {
  const given = givenClass(rest, words, io);
  if (!given.ok) return refuse(io, given.faults);
  const { record, file, faultLine } = given.value;
  const attempt = chosenAttempt(record, id, words);
  if (typeof attempt === 'string') {
    return refuse(io, [file === null ? attempt : words.say('file.line', { file, sentence: attempt })]);
  }
  const challenge = record.challenges.find((one) => one.id === attempt.challenge);
  const group = record.groups.find((one) => one.id === attempt.group);
  if (challenge === undefined) return refuse(io, [unknown('challenge', attempt, record)].map(faultLine));
  if (group === undefined) return refuse(io, [unknown('group', attempt, record)].map(faultLine));
  const { result, statics } = await withSolver(
    (tools) => evaluate(attempt, { challenge, group, events: record.supplies[challenge.id] ?? [] }, tools),
    (report) => needsSolver(report) || (without !== null && restNeedsSolver(report, attempt.layout)),
    io,
  );
  if (!result.ok)
    return refuse(
      io,
      result.issues.map((issue) => faultLine(inRecord(issue, attempt, record))),
    );
  const asked = furtherQuestions({ without, tilt }, { attempt, challenge, group, record, statics }, words);
  if (!asked.ok) return refuse(io, asked.faults);
  tell(io, [measureText(result.value, attempt.layout, challenge, record, words), ...asked.value].join('\n'));
  return WELL;
}

/** What is left of a build without a piece may stand where the whole falls, and may be too large for the small solver. */
const restNeedsSolver = ({ stability }: Report, { pieces }: Layout): boolean =>
  stability?.method === 'least-squares-and-programmes' && pieces.length > SMALL_BUILD + 1;

/** The attempt of that id, or the only one there is; a sentence when that does not single one out. */
function chosenAttempt(record: ClassRecord, id: string | null, words: TerminalWords): Attempt | string {
  const { attempts } = record;
  const known = attemptTable(record);
  const [first, second] = attempts;
  if (id === null && first !== undefined && second === undefined) return first;
  if (id === null) return words.say('files.attempt-which', { known });
  return attempts.find((attempt) => attempt.id === id) ?? words.say('files.attempt-unknown', { id, known });
}

/** One line an attempt: its id, the group, the challenge. */
function attemptTable({ attempts, groups, challenges }: ClassRecord): string {
  const nameIn = (list: readonly { readonly id: string; readonly name: string }[], id: string): string =>
    list.find((one) => one.id === id)?.name ?? id;
  const rows = attempts.map(({ id, group, challenge }) => [
    `  ${id}`,
    nameIn(groups, group),
    nameIn(challenges, challenge),
  ]);
  return tableText(rows, []).trimEnd();
}

function unknown(what: 'challenge' | 'group', attempt: Attempt, record: ClassRecord): Issue {
  return inRecord(
    { code: `${what}-unknown`, path: ['attempt', what], details: { [what]: attempt[what] } },
    attempt,
    record,
  );
}

/** Paths of a single evaluation begin with the record's kind; in the class each of them has its place. */
function inRecord(issue: Issue, attempt: Attempt, { attempts, challenges, groups }: ClassRecord): Issue {
  const [first, ...inside] = issue.path;
  const places: Readonly<Record<string, Issue['path']>> = {
    attempt: ['attempts', attempts.indexOf(attempt)],
    challenge: ['challenges', challenges.findIndex(({ id }) => id === attempt.challenge)],
    group: ['groups', groups.findIndex(({ id }) => id === attempt.group)],
    events: ['supplies', attempt.challenge],
  };
  return { ...issue, path: [...(places[String(first)] ?? []), ...inside] };
}
