// A code as squares: which are dark, and one path that draws them all.

import { encodeQR } from 'qr';

export interface QrPicture {
  /** Squares along a side, with the quiet ground all round that readers look for. */
  readonly size: number;
  /** Path of the dark squares in units of one. */
  readonly path: string;
}

/** Squares of quiet ground that the standard asks for. */
export const QUIET = 4;

/** Error correction M: up to 15 % of the code may be smudged or glare. */
export function qrPicture(text: string): QrPicture {
  const rows = encodeQR(text, 'raw', { ecc: 'medium', border: QUIET });
  const path = rows
    .map((row, y) =>
      runsOf(row)
        .map((run) => barAt(run, y))
        .join(''),
    )
    .join('');
  return { size: rows.length, path };
}

interface Run {
  readonly start: number;
  readonly length: number;
}

/** Dark squares side by side, as one: fewer seams that a screen could draw. */
function runsOf(row: readonly boolean[]): readonly Run[] {
  return row.flatMap((dark, x) => {
    if (!dark || row[x - 1] === true) return [];
    const end = row.indexOf(false, x);
    return [{ start: x, length: (end < 0 ? row.length : end) - x }];
  });
}

const barAt = ({ start, length }: Run, y: number): string => `M${start} ${y}h${length}v1h-${length}z`;
