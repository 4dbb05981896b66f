// One challenge of what a file holds: a class, a challenge or a kit alone. Without a file, of the demo class.

import { demoClass } from '@cairnmark/demo';
import type { Challenge, ClassRecord } from '@cairnmark/engine';
import { readyChallengeFor } from '@cairnmark/engine';
import type { Language, TerminalWords } from '@cairnmark/words';
import type { Io } from './io.ts';
import { knownNames, namedAs } from './named.ts';
import type { Outcome } from './read-files.ts';
import { readFile } from './read-files.ts';

export interface GivenChallenge {
  readonly record: ClassRecord;
  readonly challenge: Challenge;
  /** The file is a kit: the challenge is none of the teacher's, and its rules are not printed. */
  readonly kitAlone: boolean;
}

interface Asked {
  readonly file: string | null;
  /** Name or id of the challenge; null: the first. */
  readonly challenge: string | null;
  readonly language: Language;
}

export function givenChallenge(
  { file, challenge: asked, language }: Asked,
  words: TerminalWords,
  io: Io,
): Outcome<GivenChallenge> {
  const read = file === null ? { ok: true as const, value: demo(language) } : recordIn(file, words, io);
  if (!read.ok) return read;
  const { challenges } = read.value.record;
  const [first] = challenges;
  if (first === undefined) {
    const sentence = words.say('print.no-challenge');
    return { ok: false, faults: [file === null ? sentence : words.say('file.line', { file, sentence })] };
  }
  const challenge = asked === null ? first : namedAs(challenges, asked);
  if (challenge === undefined) {
    const fault = words.say('usage.challenge-unknown', { name: asked ?? '', known: knownNames(challenges) });
    return { ok: false, faults: [fault] };
  }
  return { ok: true, value: { ...read.value, challenge } };
}

type Given = Omit<GivenChallenge, 'challenge'>;

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
