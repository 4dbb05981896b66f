// What a call hands in, as one class: a class file as it is, or a challenge with its attempts put together.

import type { Attempt, Challenge, ClassRecord } from '@cairnmark/engine';
import type { Issue } from '@cairnmark/geometry';
import type { TerminalWords } from '@cairnmark/words';
import type { FileRecord, Outcome } from './read-files.ts';
import { faultLine } from './read-files.ts';

export interface GivenClass {
  readonly record: ClassRecord;
  /** The file that a fault of the whole is told of; null for the demo class, which is in no file. */
  readonly file: string | null;
  /** An issue of the record as a line about the file in which it stands. */
  readonly faultLine: (issue: Issue) => string;
}

/** The class that the records make up, or what does not go together. `records` is not empty. */
export function classOf(records: readonly FileRecord[], words: TerminalWords): Outcome<GivenClass> {
  const [first] = records;
  const whole = records.filter(({ decoded }) => decoded.format === 'class');
  const [one, second] = whole;
  if (second !== undefined) return refuse(second.file, words.say('files.two-classes'), words);
  if (one?.decoded.format === 'class') {
    const other = records.find(({ decoded }) => decoded.format !== 'class');
    if (other !== undefined) return refuse(other.file, words.say('files.class-and-others'), words);
    const { file, decoded } = one;
    return { ok: true, value: { record: decoded.value, file, faultLine: (issue) => faultLine(file, issue, words) } };
  }
  const stranger = records.find(({ decoded }) => decoded.format !== 'challenge' && decoded.format !== 'attempt');
  if (stranger !== undefined) {
    const { file, decoded } = stranger;
    return refuse(file, words.say('files.nothing-to-score', { format: words.names.formats[decoded.format] }), words);
  }
  return first === undefined ? { ok: false, faults: [] } : looseClass(first.file, records, words);
}

interface FromFile<T> {
  readonly file: string;
  readonly value: T;
}

function looseClass(firstFile: string, records: readonly FileRecord[], words: TerminalWords): Outcome<GivenClass> {
  const challenges: FromFile<Challenge>[] = [];
  const attempts: FromFile<Attempt>[] = [];
  for (const { file, decoded } of records) {
    if (decoded.format === 'challenge') challenges.push({ file, value: decoded.value });
    if (decoded.format === 'attempt') attempts.push({ file, value: decoded.value });
  }
  const [challenge, second] = challenges;
  if (challenge === undefined) return refuse(firstFile, words.say('files.no-challenge'), words);
  if (second !== undefined) return refuse(second.file, words.say('files.two-challenges'), words);
  if (attempts.length === 0) return refuse(challenge.file, words.say('files.no-attempt'), words);
  const record = recordOf(
    challenge.value,
    attempts.map(({ value }) => value),
  );
  const { file } = challenge;
  return { ok: true, value: { record, file, faultLine: (issue) => lineAbout(issue, file, attempts, words) } };
}

/** Groups have no file of their own: their id is their name, their pieces have the sizes of the kit. */
function recordOf(challenge: Challenge, attempts: readonly Attempt[]): ClassRecord {
  const ids = [...new Set(attempts.map(({ group }) => group))];
  return {
    name: challenge.name,
    invented: false,
    groups: ids.map((id) => ({ id, name: id, measured: {} })),
    challenges: [challenge],
    attempts,
    supplies: {},
    day: { kind: 'sum-of-points', placePoints: [], weights: {}, meanOfThosePresent: false },
  };
}

/** The path of an issue inside its own file: ["attempts", 2, "at"] is "at" in the third attempt's file. */
function lineAbout(
  issue: Issue,
  challengeFile: string,
  attempts: readonly FromFile<Attempt>[],
  words: TerminalWords,
): string {
  const [list, index, ...inside] = issue.path;
  const attempt = list === 'attempts' && typeof index === 'number' ? attempts[index] : undefined;
  return faultLine(attempt?.file ?? challengeFile, { ...issue, path: inside }, words);
}

function refuse(file: string, sentence: string, words: TerminalWords): Outcome<never> {
  return { ok: false, faults: [words.say('file.line', { file, sentence })] };
}
