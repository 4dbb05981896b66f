// Texts of the door "Trace it", and of what can be wrong with a photo. They come when the door is opened.

import type { Mend, PhotoIssue, PhotoIssueCode } from '@cairnmark/photo';
import type { trace } from './en/trace.ts';
import type { Language } from './language.ts';
import type { Filling } from './say.ts';
import { fill } from './say.ts';
import type { TextsOf, TextWords } from './text-words.ts';
import { textWords } from './text-words.ts';

/** What can keep a file from being a photo that can be measured by, before anything in it is looked for. */
export type PhotoFault = 'not-a-photo' | 'heic' | 'too-large' | 'not-readable' | 'dark' | 'blurred';

export type EnglishTrace = (typeof trace)['texts'];
export type TraceKey = keyof EnglishTrace;

export interface TraceCatalogue {
  readonly texts: TextsOf<EnglishTrace>;
  readonly issues: Readonly<Record<PhotoIssueCode, string>>;
  readonly mends: Readonly<Record<Mend, string>>;
  readonly faults: Readonly<Record<PhotoFault, string>>;
}

export interface TraceWords extends TextWords<EnglishTrace> {
  /** What is wrong with a photo or with taps on it, and what to do. `number` writes a number with so many decimals. */
  issue(issue: PhotoIssue, number: WriteNumber): readonly [what: string, mend: string];
  /** What is wrong with a file, and what to do. */
  fault(fault: PhotoFault, details: Readonly<Record<string, Filling>>): string;
}

export type WriteNumber = (value: number, decimals: number) => string;

export const traceWordsIn = (language: Language, { texts, issues, mends, faults }: TraceCatalogue): TraceWords => ({
  ...textWords(language, texts),
  issue: ({ code, mend, details }, number) => {
    const told = Object.entries(details).map(([key, value]) => [key, shown(key, value, number)]);
    return [fill(issues[code], Object.fromEntries(told)), mends[mend]];
  },
  fault: (fault, details) => fill(faults[fault], details),
});

/** Lengths to a mm, angles to a degree, shares and scales in hundredths. */
function shown(key: string, value: string | number, number: WriteNumber): string {
  if (typeof value === 'string') return value;
  if (key.endsWith('Mm')) return `${number(value, 0)} mm`;
  if (key.endsWith('Rad')) return `${number((value * 180) / Math.PI, 0)}°`;
  if (key.endsWith('Share') || key === 'scale') return `${number(100 * value, 1)} %`;
  return number(value, 0);
}
