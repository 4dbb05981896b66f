// The cells of a marker as a quadrilateral of the picture shows them, and the ring of paper about it.

import { MARKER_CELLS } from '../ground-sheet.ts';
import type { Grey } from '../image/photo.ts';
import { brightnessAt } from '../image/sample.ts';
import { fromUnitSquare, mapBy } from '../numbers/homography.ts';
import type { Quad } from './quadrilateral.ts';

/** Brightness of 8 by 8 cells, row by row from the first corner on: the outer ring is paper, the next the black border. */
export type Cells = readonly (readonly number[])[];

export function cellsOf(grey: Grey, quad: Quad): Cells {
  const toPicture = fromUnitSquare(quad);
  return range(-1, MARKER_CELLS + 1).map((row) =>
    range(-1, MARKER_CELLS + 1).map((column) => {
      let sum = 0;
      for (const down of WITHIN_CELL) {
        for (const right of WITHIN_CELL) {
          const [x, y] = mapBy(toPicture, [(column + right) / MARKER_CELLS, (row + down) / MARKER_CELLS]);
          sum += brightnessAt(grey, x, y);
        }
      }
      return sum / WITHIN_CELL.length ** 2;
    }),
  );
}

/** The medians of both rings. */
export function paperAndBorder(cells: Cells): { paper: number; border: number } {
  const on = (depth: number): number[] => cells.flatMap((row, r) => row.filter((_, c) => depthOf(r, c) === depth));
  return { paper: median(on(0)), border: median(on(1)) };
}

/** Shares of a cell: nine points of its inner half. */
const WITHIN_CELL: readonly number[] = [0.3, 0.5, 0.7];

const LAST = MARKER_CELLS + 1;
const depthOf = (row: number, column: number): number => Math.min(row, column, LAST - row, LAST - column);

const range = (from: number, to: number): number[] => Array.from({ length: to - from }, (_, k) => from + k);

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? 0;
}
