// The class that a call is about: that of the files it names, or the demo class where it names none.

import { demoClass } from '@cairnmark/demo';
import type { TerminalWords } from '@cairnmark/words';
import type { GivenClass } from './class-of.ts';
import { classOf } from './class-of.ts';
import type { Io } from './io.ts';
import type { Outcome } from './read-files.ts';
import { readFiles } from './read-files.ts';

export function givenClass(files: readonly string[], words: TerminalWords, io: Io): Outcome<GivenClass> {
  if (files.length === 0) return { ok: true, value: { record: demoClass(), file: null, faultLine: words.issue } };
  const records = readFiles(files, words, io);
  return records.ok ? classOf(records.value, words) : records;
}
