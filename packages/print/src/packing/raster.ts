// An outline as runs of the cells that it touches, row by row. Every cell with a point of the outline or of its inside
// counts: those that its sides pass through, and those whose middle lies inside.

import type { Vec2 } from '@cairnmark/geometry';
import { CELL_MM, CELL_SLACK } from './grid.ts';

/** Cells side by side in a row, both ends included; rows from below, columns from the left. */
export interface Run {
  readonly row: number;
  readonly first: number;
  readonly last: number;
}

export interface Raster {
  readonly columns: number;
  readonly rows: number;
  readonly runs: readonly Run[];
}

/** `ring` is closed by itself, its lowest x and y are 0; mm. */
export function rasterOf(ring: readonly Vec2[], widthMm: number, heightMm: number): Raster {
  const [columns, rows] = [widthMm, heightMm].map((mm) => Math.max(1, Math.ceil(mm / CELL_MM - CELL_SLACK))) as [
    number,
    number,
  ];
  const cells = new Uint8Array(columns * rows);
  const mark: Mark = (row, fromMm, toMm) => {
    const inRow = Math.min(Math.max(row, 0), rows - 1) * columns;
    const first = Math.max(0, Math.floor(fromMm / CELL_MM));
    cells.fill(1, inRow + first, inRow + Math.min(columns - 1, Math.floor(toMm / CELL_MM)) + 1);
  };
  for (const [k, from] of ring.entries()) markSide(from, ring[k + 1] ?? ring[0] ?? from, mark);
  for (let row = 0; row < rows; row += 1) markInside(ring, row, mark);
  return { columns, rows, runs: runsOf(cells, columns, rows) };
}

type Mark = (row: number, fromMm: number, toMm: number) => void;

/** In every row that it passes through, a side takes all cells from its left end there to its right end. */
function markSide(a: Vec2, b: Vec2, mark: Mark): void {
  const [low, high] = a[1] <= b[1] ? [a, b] : [b, a];
  const rise = high[1] - low[1];
  const xAt = (y: number): number => low[0] + ((high[0] - low[0]) * (y - low[1])) / rise;
  for (let row = Math.floor(low[1] / CELL_MM); row <= Math.floor(high[1] / CELL_MM); row += 1) {
    const y0 = Math.max(low[1], row * CELL_MM);
    const y1 = Math.min(high[1], (row + 1) * CELL_MM);
    const [x0, x1] = rise === 0 ? [low[0], high[0]] : [xAt(y0), xAt(y1)];
    mark(row, Math.min(x0, x1), Math.max(x0, x1));
  }
}

/** Along the middle of a row, from where it goes in to where it comes out. */
function markInside(ring: readonly Vec2[], row: number, mark: Mark): void {
  const y = (row + 0.5) * CELL_MM;
  const crossings: number[] = [];
  let before = ring.at(-1);
  for (const corner of ring) {
    if (before !== undefined && before[1] <= y !== corner[1] <= y) {
      crossings.push(before[0] + ((corner[0] - before[0]) * (y - before[1])) / (corner[1] - before[1]));
    }
    before = corner;
  }
  crossings.sort((a, b) => a - b);
  for (let k = 1; k < crossings.length; k += 2) mark(row, crossings[k - 1] ?? 0, crossings[k] ?? 0);
}

function runsOf(cells: Uint8Array, columns: number, rows: number): readonly Run[] {
  const runs: Run[] = [];
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < columns; column += 1) {
      if (cells[row * columns + column] === 0) continue;
      const first = column;
      while (column + 1 < columns && cells[row * columns + column + 1] === 1) column += 1;
      runs.push({ row, first, last: column });
    }
  }
  return runs;
}
