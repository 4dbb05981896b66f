// A page as bits, row by row from below: 1 is taken. Whether an outline fits is asked for all columns of a row at once. mm
// play no part here, all is cells.

import { CELL_MM, GAP_CELLS } from './grid.ts';
import type { Pose } from './poses.ts';
import type { Space } from './types.ts';

export interface BitPage {
  readonly columns: number;
  readonly rows: number;
  /** Words of 32 cells in a row. */
  readonly words: number;
  readonly bits: Int32Array;
  /** How many cells are not taken. */
  readonly free: number;
}

export interface Cell {
  readonly column: number;
  readonly row: number;
}

export function emptyPage({ widthMm, heightMm }: Space): BitPage {
  const [columns, rows] = [Math.ceil(widthMm / CELL_MM), Math.ceil(heightMm / CELL_MM)];
  const words = Math.ceil(columns / 32);
  return { columns, rows, words, bits: new Int32Array(rows * words), free: columns * rows };
}

/** The page with a pose laid there: its cells are taken, and those around it that keep the others away. */
export function laidOn(page: BitPage, pose: Pose, at: Cell): BitPage {
  const bits = page.bits.slice();
  let { free } = page;
  for (const { row, first, last } of pose.runs) {
    const from = Math.max(0, at.column + first - GAP_CELLS);
    const to = Math.min(page.columns - 1, at.column + last + GAP_CELLS);
    const lowest = Math.max(0, at.row + row - GAP_CELLS);
    const highest = Math.min(page.rows - 1, at.row + row + GAP_CELLS);
    for (let r = lowest; r <= highest; r += 1) {
      for (let column = from; column <= to; column += 1) {
        const [word, bit] = [r * page.words + (column >> 5), 1 << (column & 31)];
        if (((bits[word] ?? 0) & bit) !== 0) continue;
        bits[word] = (bits[word] ?? 0) | bit;
        free -= 1;
      }
    }
  }
  return { ...page, bits, free };
}
