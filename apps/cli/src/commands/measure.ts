// measure: all facts of one build, each with its working; what counted as touching and as closed; rules and points.

import type { Attempt, ClassRecord } from '@cairnmark/engine';
import { evaluate } from '@cairnmark/engine';
import type { Issue } from '@cairnmark/geometry';
import type { Words } from '@cairnmark/words';
import type { Call } from '../call.ts';
import type { ExitCode } from '../exit.ts';
import { WELL } from '../exit.ts';
import { givenClass } from '../given-class.ts';
import type { Io } from '../io.ts';
import { measureText } from '../measure-text.ts';
import { refuse, tell } from '../speak.ts';
import { tableText } from '../table.ts';

export function measure({ rest, attempt: id }: Call, words: Words, io: Io): ExitCode {
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
  const report = evaluate(attempt, challenge, group);
  if (!report.ok)
    return refuse(
      io,
      report.issues.map((issue) => faultLine(inRecord(issue, attempt, record))),
    );
  tell(io, measureText(report.value, challenge, record, words));
  return WELL;
}

/** The attempt of that id, or the only one there is; a sentence when that does not single one out. */
function chosenAttempt(record: ClassRecord, id: string | null, words: Words): Attempt | string {
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

/** Paths of a single evaluation begin with the record's kind; in the class each of them has its place in a list. */
function inRecord(issue: Issue, attempt: Attempt, { attempts, challenges, groups }: ClassRecord): Issue {
  const [first, ...inside] = issue.path;
  const places: Readonly<Record<string, readonly [string, number]>> = {
    attempt: ['attempts', attempts.indexOf(attempt)],
    challenge: ['challenges', challenges.findIndex(({ id }) => id === attempt.challenge)],
    group: ['groups', groups.findIndex(({ id }) => id === attempt.group)],
  };
  return { ...issue, path: [...(places[String(first)] ?? []), ...inside] };
}
