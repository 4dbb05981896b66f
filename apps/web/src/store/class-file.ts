// Class files as text. Apart from the storage, so that the first screen does not load the readers of files.

import type { ClassRecord } from '@cairnmark/engine';
import type { FileIssue } from '@cairnmark/formats';
import { decode, encode } from '@cairnmark/formats';
import type { Result } from '@cairnmark/geometry';

export function readClass(text: string): Result<ClassRecord, FileIssue> {
  const decoded = decode(text, 'class');
  return decoded.ok ? { ok: true, value: decoded.value.value } : decoded;
}

export const writeClass = (record: ClassRecord): string => encode('class', record);
