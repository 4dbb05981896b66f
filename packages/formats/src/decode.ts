// Text of a file -> record, or every fault of it. Three looks, each at the whole file: at the text, at the shape of each
// value, and, once every shape is right, at what the values say together (names that point nowhere, impossible sizes).

import type { Issue, Result } from '@cairnmark/geometry';
import { failure } from '@cairnmark/geometry';
import type { RecordIssue } from './codec.ts';
import type { EnvelopeIssueCode } from './envelope.ts';
import { openEnvelope } from './envelope.ts';
import type { Decoded, Format } from './formats.ts';
import { CODECS } from './formats.ts';
import type { JsonIssueCode } from './json.ts';
import { readJson } from './json.ts';
import { FILE_CHARACTERS_MOST, ISSUES_TOLD_MOST } from './limits.ts';
import { STEPS } from './steps.ts';

export type FileIssueCode =
  | 'file-too-large' // details: characters, most
  | 'more-issues'; // details: told. The last of a list that was cut off

/** What can be wrong with a file. Paths start at the outermost keys of the file. */
export type FileIssue = Issue<FileIssueCode | JsonIssueCode | EnvelopeIssueCode> | RecordIssue;

/**
 * The record that `text` holds, of `format` where one is asked for. No key is dropped and nothing is mended: an unknown
 * key is an issue, a newer version is refused. Of more than ISSUES_TOLD_MOST issues the first are told, with a last one
 * that says so.
 */
export function decode(text: string): Result<Decoded, FileIssue>;
export function decode<F extends Format>(text: string, format: F): Result<Decoded<F>, FileIssue>;
export function decode(text: string, format?: Format): Result<Decoded, FileIssue> {
  const read = readRecord(text, format);
  return read.ok ? read : failure(cutOff(read.issues));
}

function readRecord(text: string, expected: Format | undefined): Result<Decoded, FileIssue> {
  if (text.length > FILE_CHARACTERS_MOST) {
    const details = { characters: text.length, most: FILE_CHARACTERS_MOST };
    return failure([{ code: 'file-too-large', path: [], details }]);
  }
  // Some editors put a mark of the byte order before the text.
  const json = readJson(text.startsWith('\uFEFF') ? text.slice(1) : text);
  if (!json.ok) return json;
  const opened = openEnvelope(json.value, expected, STEPS);
  return opened.ok ? CODECS[opened.value.format].read(opened.value.content) : opened;
}

function cutOff(issues: readonly FileIssue[]): readonly FileIssue[] {
  if (issues.length <= ISSUES_TOLD_MOST) return issues;
  return [...issues.slice(0, ISSUES_TOLD_MOST), { code: 'more-issues', path: [], details: { told: ISSUES_TOLD_MOST } }];
}
