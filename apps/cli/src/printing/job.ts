// What a call wants printed: a class and one of its challenges, from a file of a class, of a challenge or of a kit alone.

import type { Ruler } from '@cairnmark/geometry';
import { rulerOf } from '@cairnmark/geometry';
import type { PaperSize, PrintIssue } from '@cairnmark/print';
import type { Language, PrintWords, TerminalWords } from '@cairnmark/words';
import { printWords } from '@cairnmark/words';
import type { GivenChallenge } from '../given-challenge.ts';
import { givenChallenge } from '../given-challenge.ts';
import type { Io } from '../io.ts';
import type { Outcome } from '../read-files.ts';
import type { PrintOptions } from './options.ts';

export interface Job extends GivenChallenge {
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

export function jobOf({ file, challenge, options, language }: Asked, words: TerminalWords, io: Io): Outcome<Job> {
  const inFile = (sentence: string): string => (file === null ? sentence : words.say('file.line', { file, sentence }));
  const given = givenChallenge({ file, challenge, language }, words, io);
  if (!given.ok) return given;
  const ruler = rulerOf(given.value.challenge.ruler);
  const printed = printWords(language);
  return {
    ok: true,
    value: {
      ...given.value,
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
