// The outermost keys of a file, `format` and `version`: which record it says it holds, and whether this program knows
// that version of it.

import type { Issue, Result } from '@cairnmark/geometry';
import { failure, success } from '@cairnmark/geometry';
import { MARK } from './codec.ts';
import type { Format } from './formats.ts';
import { FORMATS } from './formats.ts';
import { NAME_CHARACTERS_MOST } from './limits.ts';
import type { Content, Step } from './steps.ts';
import { bringUp, presentVersion } from './steps.ts';

export type EnvelopeIssueCode =
  | 'not-a-cairnmark-file'
  | 'format-unknown' // details: format, allowed (names parted by a comma and a blank)
  | 'format-other' // details: expected, received
  | 'version-newer' // details: version, newest: a newer program wrote it
  | 'version-unknown';

/** What stands in the envelope, brought up to the present version. `expected`: the format that was asked for. */
export function openEnvelope(
  file: unknown,
  expected: Format | undefined,
  steps: readonly Step[],
): Result<{ readonly format: Format; readonly content: Content }, Issue<EnvelopeIssueCode>> {
  const { format: mark, version, ...content } = isObject(file) ? file : {};
  if (typeof mark !== 'string' || !mark.startsWith(MARK)) return refused('not-a-cairnmark-file', []);
  const named = mark.slice(MARK.length, MARK.length + NAME_CHARACTERS_MOST);
  const format = FORMATS.find((candidate) => candidate === named);
  if (format === undefined)
    return refused('format-unknown', ['format'], { format: named, allowed: FORMATS.join(', ') });
  if (expected !== undefined && format !== expected) {
    return refused('format-other', ['format'], { expected, received: format });
  }
  const newest = presentVersion(format, steps);
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return refused('version-unknown', ['version']);
  }
  if (version > newest) return refused('version-newer', ['version'], { version, newest });
  return success({ format, content: bringUp(format, version, content, steps) });
}

const isObject = (value: unknown): value is Content =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const refused = (code: EnvelopeIssueCode, path: Issue['path'], details: Issue['details'] = {}) =>
  failure<Issue<EnvelopeIssueCode>>([{ code, path, details }]);
