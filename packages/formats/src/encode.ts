// Record -> text of a file: two blanks a level, keys in one fixed order, a line end at the end. The same record gives the
// same bytes, and `decode` gives the record back.

import type { RecordIssue } from './codec.ts';
import type { Format, Records } from './formats.ts';
import { CODECS } from './formats.ts';

/** Throws RangeError for a record that `decode` would refuse: what cannot be read back must not be kept. */
export function encode<F extends Format>(format: F, value: Records[F]): string {
  return CODECS[format].write(value);
}

/** Why a record could not be written; [] where it can. Paths start at the record. */
export function faultsOf<F extends Format>(format: F, value: Records[F]): readonly RecordIssue[] {
  return CODECS[format].faults(value);
}
