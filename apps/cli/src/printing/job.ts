// What a call wants printed: a class and one of its challenges, from a file of a class, of a challenge or of a kit alone.

import { demoClass } from '@cairnmark/demo';
import type { Challenge, ClassRecord } from '@cairnmark/engine';
import { readyChallengeFor } from '@cairnmark/engine';
import type { Ruler } from '@cairnmark/geometry';
import { rulerOf } from '@cairnmark/geometry';
import type { PaperSize, PrintIssue } from '@cairnmark/print';
import type { Language, PrintWords, TerminalWords } from '@cairnmark/words';
import { printWords } from '@cairnmark/words';
import type { Io } from '../io.ts';
import { knownNames, namedAs } from '../named.ts';
import type { Outcome } from '../read-files.ts';
import { readFile } from '../read-files.ts';
import type { PrintOptions } from './options.ts';

export interface Job {
  readonly record: ClassRecord;
  readonly challenge: Challenge;
  /** The file is a kit: the challenge is none of the teacher's, and its rules are not printed. */
  readonly kitAlone: boolean;
  readonly paper: PaperSize;
  /** With which lengths are told on paper. */
  readonly ruler: Ruler;
  readonly options: PrintOptions;
  readonly language: Language;
  readonly words: TerminalWords;
  readonly printed: PrintWords;
  /** An issue of a page as a line about the file. */
  readonly faultLine: (issue: PrintIssue) => string;
}

interface Asked {
  readonly file: string | null;
  /** Name or id of the challenge; null: the first. */
  readonly challenge: string | null;
  readonly options: PrintOptions;
  readonly language: Language;
}

export function jobOf(
  { file, challenge: asked, options, language }: Asked,
  words: TerminalWords,
  io: Io,
): Outcome<Job> {
  const inFile = (sentence: string): string => (file === null ? sentence : words.say('file.line', { file, sentence }));
  const read = file === null ? { ok: true as const, value: demo(language) } : recordIn(file, words, io);
  if (!read.ok) return read;
  const { record, kitAlone } = read.value;
  const { challenges } = record;
  const [first] = challenges;
  if (first === undefined) return { ok: false, faults: [inFile(words.say('print.no-challenge'))] };
  const challenge = asked === null ? first : namedAs(challenges, asked);
  if (challenge === undefined) {
    return {
      ok: false,
      faults: [words.say('usage.challenge-unknown', { name: asked ?? '', known: knownNames(challenges) })],
    };
  }
  const ruler = rulerOf(challenge.ruler);
  const printed = printWords(language);
  return {
    ok: true,
    value: {
      record,
      challenge,
      kitAlone,
      paper: options.paper ?? (ruler.unit === 'in' ? 'letter' : 'a4'),
      // Millimetres are the divisions of a ruler that is numbered in centimetres.
      ruler: ruler.unit === 'mm' ? { ...ruler, unit: 'cm' } : ruler,
      options,
      language,
      words,
      printed,
      faultLine: (issue) => inFile(printed.issue(issue)),
    },
  };
}

interface Given {
  readonly record: ClassRecord;
  readonly kitAlone: boolean;
}

const demo = (language: Language): Given => ({ record: demoClass(language), kitAlone: false });

function recordIn(file: string, words: TerminalWords, io: Io): Outcome<Given> {
  const read = readFile(file, words, io);
  if (!read.ok) return read;
  const { decoded } = read.value;
  switch (decoded.format) {
    case 'class':
      return { ok: true, value: { record: decoded.value, kitAlone: false } };
    case 'challenge':
      return { ok: true, value: { record: classWith(decoded.value), kitAlone: false } };
    case 'kit': {
      const challenge = readyChallengeFor('tallest', decoded.value.name, decoded.value, null, { units: 'cm' });
      return { ok: true, value: { record: classWith(challenge), kitAlone: true } };
    }
    default: {
      const sentence = words.say('print.nothing', { format: words.names.formats[decoded.format] });
      return { ok: false, faults: [words.say('file.line', { file, sentence })] };
    }
  }
}

/** A class without groups and builds. */
const classWith = (challenge: Challenge): ClassRecord => ({
  name: challenge.name,
  invented: false,
  groups: [],
  challenges: [challenge],
  attempts: [],
  supplies: {},
  day: { kind: 'sum-of-points', placePoints: [], weights: {}, meanOfThosePresent: false },
});
