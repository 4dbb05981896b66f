// Names of groups from a list that somebody typed or pasted: one a line, or parted by commas, semicolons or tabs, as they
// come out of a spreadsheet.

import { GROUPS_MOST, NAME_CHARACTERS_MOST } from '@cairnmark/formats';
import { plainText } from './plain-text.ts';

export interface ReadNames {
  /** In the order of the list, each once. */
  readonly names: readonly string[];
  /** Names that stand there more than once, or already in the class: they were taken once. */
  readonly twice: readonly string[];
  /** Names of more characters than a name may have: they were left out. */
  readonly tooLong: readonly string[];
  /** Names beyond the most groups that a class can have: they were left out. */
  readonly tooMany: readonly string[];
}

/** `taken`: names of the groups that the class has already. Capitals make no difference between names. */
export function readNames(text: string, taken: readonly string[]): ReadNames {
  const all = text
    .split(/[\n\r]+/)
    .flatMap(cellsOf)
    .map((name) => plainText(plainText(name).replace(NUMBERING, '')));
  const known = new Set(taken.map(folded));
  const read: Record<keyof ReadNames, string[]> = { names: [], twice: [], tooLong: [], tooMany: [] };
  for (const name of all.filter((one) => one !== '')) {
    if (name.length > NAME_CHARACTERS_MOST) read.tooLong.push(name);
    else if (known.has(folded(name))) read.twice.push(name);
    else if (taken.length + read.names.length >= GROUPS_MOST) read.tooMany.push(name);
    else {
      known.add(folded(name));
      read.names.push(name);
    }
  }
  return read;
}

/** Of one row. A column of bare numbers beside the names, how many they are or in which order, is no name. */
function cellsOf(row: string): readonly string[] {
  const columns = row.split('\t');
  const named = columns.filter((cell) => /\p{L}/u.test(cell));
  return (named.length > 0 ? named : columns).flatMap((cell) => cell.split(/[,;]/));
}

/** In front of an item of a numbered list: "3. Terns". */
const NUMBERING = /^\d+[.)]\s+/;

/** Whether one of the names is the same but for capitals. */
export const isAmong = (name: string, names: readonly string[]): boolean =>
  names.some((one) => folded(one) === folded(name));

const folded = (name: string): string => name.normalize('NFKC').toLowerCase();
