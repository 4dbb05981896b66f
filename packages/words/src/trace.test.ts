// The sentences about photos and taps, in both languages: nothing is left open, and what to do always stands beside what is wrong.

import type { PhotoIssue, PhotoIssueCode } from '@cairnmark/photo';
import { describe, expect, it } from 'vitest';
import { traceWords } from './at-once.ts';
import { trace as english } from './en/trace.ts';
import { trace as spanish } from './es/trace.ts';
import { slotsOf } from './say.ts';
import type { PhotoFault } from './trace.ts';

/** What is told with each, as the photo package and the app tell it. */
const DETAILS: Readonly<Partial<Record<PhotoIssueCode, PhotoIssue['details']>>> = {
  'photo-too-small': { widthPx: 800, heightPx: 600, leastPx: 1590 },
  'too-few-markers': { found: 2, least: 3 },
  'print-scale-off': { scale: 0.97, sigma: 0.001 },
  'taps-too-few': { given: 1, least: 2 },
};
const FAULTS: Readonly<Record<PhotoFault, Readonly<Record<string, number>>>> = {
  'not-a-photo': {},
  heic: {},
  'too-large': { widthPx: 9000, heightPx: 7000 },
  'not-readable': {},
  dark: {},
  blurred: {},
};
const OPEN = /[{}]| \?|undefined|NaN/;

const number = (value: number, most: number): string => String(Number(value.toFixed(most)));

describe.each(['en', 'es'] as const)('the sentences of tracing, %s', (language) => {
  const words = traceWords(language);

  it.each(Object.keys(english.issues) as PhotoIssueCode[])('%s', (code) => {
    const told = words.issue({ code, mend: 'tap-again', path: [], details: DETAILS[code] ?? {} }, number);
    expect(told).toHaveLength(2);
    for (const sentence of told) expect(sentence).toMatch(/^[^{}]+[.!?]$/);
    expect(told.join(' ')).not.toMatch(OPEN);
  });

  it.each(Object.entries(FAULTS) as [PhotoFault, Readonly<Record<string, number>>][])('%s', (fault, details) => {
    // What is wrong, then what to do.
    expect(words.fault(fault, details)).toMatch(/^[^{}]+\. ?[^{}]*\.$/);
  });
});

it('shares and scales are told in hundredths', () => {
  const issue = { code: 'print-scale-off', mend: 'print-at-full-size', path: [], details: { scale: 0.9703 } } as const;
  expect(traceWords('en').issue(issue, number)[0]).toContain('97 %');
});

it('both languages ask for the same names', () => {
  for (const part of ['texts', 'issues', 'faults'] as const) {
    const other: Readonly<Record<string, string>> = spanish[part];
    for (const [key, text] of Object.entries(english[part])) {
      expect([...slotsOf(other[key] ?? '')].sort(), key).toEqual([...slotsOf(text)].sort());
    }
  }
});
