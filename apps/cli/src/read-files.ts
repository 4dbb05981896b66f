// Files by name -> records, or every fault of every file, each as a line that names the file, the place and the mend.

import type { Decoded, FileIssue } from '@cairnmark/formats';
import { decode } from '@cairnmark/formats';
import type { Issue } from '@cairnmark/geometry';
import type { TerminalWords } from '@cairnmark/words';
import type { Io } from './io.ts';
import { BYTES_MOST } from './io.ts';

/** A record with the file that it came from. */
export interface FileRecord {
  readonly file: string;
  readonly decoded: Decoded;
}

export type Outcome<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly faults: readonly string[] };

/** The records of all files, in their order, or the faults of all files. */
export function readFiles(files: readonly string[], words: TerminalWords, io: Io): Outcome<readonly FileRecord[]> {
  const records: FileRecord[] = [];
  const faults: string[] = [];
  for (const file of files) {
    const read = readFile(file, words, io);
    if (read.ok) records.push(read.value);
    else faults.push(...read.faults);
  }
  return faults.length > 0 ? { ok: false, faults } : { ok: true, value: records };
}

export function readFile(file: string, words: TerminalWords, io: Io): Outcome<FileRecord> {
  const text = readText(file, words, io);
  if (!text.ok) return text;
  const decoded = decode(text.value);
  if (decoded.ok) return { ok: true, value: { file, decoded: decoded.value } };
  return { ok: false, faults: decoded.issues.map((issue: FileIssue) => faultLine(file, issue, words)) };
}

/** "skerry.json: attempts 3, at: This is no date and time. Write it like ..." */
export function faultLine(file: string, issue: Issue, words: TerminalWords): string {
  return words.say('file.line', { file, sentence: words.issue(issue) });
}

function readText(file: string, words: TerminalWords, io: Io): Outcome<string> {
  const fault = (sentence: string): Outcome<string> => ({
    ok: false,
    faults: [words.say('file.line', { file, sentence })],
  });
  const read = io.readFile(file);
  if (!read.ok) {
    return fault(
      read.fault === 'too-large'
        ? words.say('file.too-large', { most: BYTES_MOST / 1_000_000 })
        : words.say(`file.${read.fault}`),
    );
  }
  try {
    const value = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(read.bytes);
    return value.trim() === '' ? fault(words.say('file.empty')) : { ok: true, value };
  } catch {
    return fault(words.say('file.not-utf8'));
  }
}
