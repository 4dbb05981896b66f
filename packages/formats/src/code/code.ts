// One try as a short text for a code on a screen, and back. The text: a mark with the version, then bytes in base 45; the
// bytes: fingerprints, the attempt by a written schema, and a checksum of all that. The same try gives the same text, and a
// text that says anything else than what would be written is refused.

import type { Attempt } from '@cairnmark/engine';
import type { Issue, Result } from '@cairnmark/geometry';
import { failure, success } from '@cairnmark/geometry';
import type { RecordIssue } from '../codec.ts';
import { CODECS } from '../formats.ts';
import { CODE_BYTES_MOST } from '../limits.ts';
import { attempt } from './attempt.ts';
import { base45, bytesOfBase45 } from './base45.ts';
import type { BitsIn, BitsOut } from './bits.ts';
import { bitsIn, bitsOut } from './bits.ts';
import { crc32 } from './crc32.ts';
import type { Part } from './part.ts';
import { record } from './part.ts';
import type { Prints } from './prints.ts';
import { PRINT_BITS } from './prints.ts';

export type CodeIssueCode =
  | 'code-too-large' // details: bytes, most
  | 'code-of-others' // no code of ours
  | 'code-newer' // details: version, newest
  | 'code-misread' // a part was not read as it stands
  | 'code-not-ours'; // read as it stands, and not as this program writes

export type CodeIssue = Issue<CodeIssueCode> | RecordIssue;

/** What a code holds. */
export interface CodedTry {
  readonly attempt: Attempt;
  /** Of the class that the code comes from. */
  readonly prints: Prints;
}

/** The text for a code; refused where it is too large for one. Throws RangeError for an attempt that no file takes. */
export function encodeCode(coded: CodedTry): Result<string, CodeIssue> {
  const kept = CODECS.attempt.read(coded.attempt);
  if (!kept.ok) throw new RangeError(`not an attempt that can be read back: ${JSON.stringify(kept.issues)}`);
  const out = bitsOut(CODE_BYTES_MOST);
  codedTry.write({ ...coded, attempt: kept.value.value }, out);
  const bytes = out.byteCount() + CHECK_BYTES;
  if (bytes > CODE_BYTES_MOST) return refused('code-too-large', { bytes, most: CODE_BYTES_MOST });
  return success(`${MARK}${VERSION}:${base45(checked(out.bytes()))}`);
}

/** What the text of a code says, or why it is not taken. Nothing is mended. */
export function decodeCode(text: string): Result<CodedTry, CodeIssue> {
  const [mark = '', version] = /^CAIRN([1-9]\d{0,3}):/.exec(text) ?? [];
  if (version === undefined) return refused('code-of-others');
  if (Number(version) > VERSION) return refused('code-newer', { version: Number(version), newest: VERSION });
  if (text.length > CHARACTERS_MOST) return refused('code-misread');
  const bytes = bytesOfBase45(text.slice(mark.length));
  const content = bytes === null ? null : unchecked(bytes);
  if (content === null) return refused('code-misread');
  const from = bitsIn(content);
  const coded = codedTry.read(from);
  if (from.isFaulty()) return refused('code-not-ours');
  const kept = CODECS.attempt.read(coded.attempt);
  if (!kept.ok) return kept;
  const again = encodeCode(coded);
  return again.ok && again.value === text ? success(coded) : refused('code-not-ours');
}

const MARK = 'CAIRN';
const VERSION = 1;
const CHECK_BYTES = 4;
/** The mark, the version, and three signs for two bytes. */
const CHARACTERS_MOST = 10 + Math.ceil((CODE_BYTES_MOST * 3) / 2);

const print: Part<number> = {
  write: (value: number, out: BitsOut) => out.put(value, PRINT_BITS),
  read: (from: BitsIn) => from.take(PRINT_BITS),
};

const codedTry = record<CodedTry>({ prints: record<Prints>({ rules: print, kit: print, sizes: print }), attempt });

const refused = (code: CodeIssueCode, details: Issue['details'] = {}) =>
  failure<Issue<CodeIssueCode>>([{ code, path: [], details }]);

/** With its checksum behind it. */
function checked(content: Uint8Array): Uint8Array {
  const bytes = new Uint8Array(content.length + CHECK_BYTES);
  bytes.set(content);
  new DataView(bytes.buffer).setUint32(content.length, crc32(content));
  return bytes;
}

/** null: the checksum is that of another content. */
function unchecked(bytes: Uint8Array): Uint8Array | null {
  if (bytes.length < CHECK_BYTES) return null;
  const content = bytes.subarray(0, -CHECK_BYTES);
  const told = new DataView(bytes.buffer).getUint32(content.length);
  return told === crc32(content) ? content : null;
}
