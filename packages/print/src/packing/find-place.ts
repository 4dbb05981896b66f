// Where a pose fits on a page: the lowest row, and there the leftmost column.
//
// A run of cells of the pose forbids a column where any cell under it is taken. For runs of 1, 2, 4, 8, ... cells that is
// worked out once for the page ("spans"): bit x of span k says whether any of the 2^k cells from x on is taken. A run of any
// length is two of these that overlap. All columns of a row are then decided with a few operations on words.

import type { BitPage, Cell } from './bit-page.ts';
import type { Pose } from './poses.ts';

export type Spans = readonly Int32Array[];

export function spansOf(page: BitPage): Spans {
  const spans: Int32Array[] = [page.bits];
  for (let length = 1; 2 * length <= page.columns; length *= 2) {
    const half = spans.at(-1) ?? page.bits;
    const span = half.slice();
    for (let row = 0; row < page.rows; row += 1)
      orShifted(half, row * page.words, length, span, row * page.words, page.words);
    spans.push(span);
  }
  return spans;
}

/** null where it does not fit with its lower left cell in one of the rows up to `mostRow`. */
export function findPlace(
  page: BitPage,
  spans: Spans,
  pose: Pose,
  probes: readonly Probe[],
  mostRow: number,
): Cell | null {
  const { words } = page;
  const outside = columnsPast(pose.mostColumn, words);
  const forbidden = new Int32Array(words);
  for (let row = 0; row <= Math.min(pose.mostRow, mostRow); row += 1) {
    forbidden.set(outside);
    const fits = probes.every((probe) => {
      const span = spans[probe.span] ?? page.bits;
      const inRow = (row + probe.row) * words;
      orShifted(span, inRow, probe.first, forbidden, 0, words);
      if (probe.second !== probe.first) orShifted(span, inRow, probe.second, forbidden, 0, words);
      return hasFree(forbidden);
    });
    if (fits) return { row, column: firstFree(forbidden) };
  }
  return null;
}

/** A run as two spans: those of 2^span cells from `first` on, and from `second` on. */
export interface Probe {
  readonly row: number;
  readonly span: number;
  readonly first: number;
  readonly second: number;
}

/** Long runs first: they soonest forbid everything. */
export const probesOf = ({ runs }: Pose): readonly Probe[] =>
  runs
    .map(({ row, first, last }) => {
      const span = 31 - Math.clz32(last - first + 1);
      return { row, span, first, second: last - 2 ** span + 1, length: last - first };
    })
    .sort((a, b) => b.length - a.length || a.row - b.row);

/** Row of words `into` |= row of words `from`, moved `by` cells to the left; from the right come zeros. */
function orShifted(
  from: Int32Array,
  start: number,
  by: number,
  into: Int32Array,
  intoStart: number,
  words: number,
): void {
  const [skip, bits] = [by >> 5, by & 31];
  for (let w = 0; w + skip < words; w += 1) {
    const at = start + w + skip;
    const here = (from[at] ?? 0) >>> bits;
    const next = bits > 0 && w + skip + 1 < words ? (from[at + 1] ?? 0) << (32 - bits) : 0;
    into[intoStart + w] = (into[intoStart + w] ?? 0) | here | next;
  }
}

/** Ones in every column after `most`. */
function columnsPast(most: number, words: number): Int32Array {
  const past = new Int32Array(words).fill(-1);
  for (let column = 0; column <= most; column += 1)
    past[column >> 5] = (past[column >> 5] ?? 0) & ~(1 << (column & 31));
  return past;
}

const hasFree = (forbidden: Int32Array): boolean => forbidden.some((word) => word !== -1);

function firstFree(forbidden: Int32Array): number {
  const word = forbidden.findIndex((one) => one !== -1);
  const free = ~(forbidden[word] ?? 0);
  return 32 * word + 31 - Math.clz32(free & -free);
}
