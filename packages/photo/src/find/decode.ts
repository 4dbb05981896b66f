// Which marker a quadrilateral of the picture shows, and which way round it lies.

import type { Vec2 } from '@cairnmark/geometry';
import { isWhite, MARKER_CELLS } from '../ground-sheet.ts';
import type { Grey } from '../image/photo.ts';
import { brightnessAt } from '../image/sample.ts';
import { allMarkers } from '../marker-list.ts';
import { fromUnitSquare, mapBy } from '../numbers/homography.ts';
import { LEAST_CONTRAST, MOST_WRONG_BITS } from '../tolerance.ts';
import type { Quad } from './quadrilateral.ts';

export interface Decoded {
  readonly id: number;
  /** The same corners, begun at the upper left one of the marker as printed. */
  readonly corners: Quad;
  /** Cells that are not as printed. */
  readonly wrongBits: number;
  /** Steps of brightness between the paper about the marker and its black border. */
  readonly contrast: number;
}

/** Null where there is no marker: no dark border on bright paper, or a code that is none of ours within one bit. */
export function decodeMarker(grey: Grey, quad: Quad): Decoded | null {
  const toPicture = fromUnitSquare(quad);
  const cells = range(-1, MARKER_CELLS + 1).map((row) =>
    range(-1, MARKER_CELLS + 1).map((column) => cellBrightness(grey, toPicture, row, column)),
  );
  const at = (row: number, column: number): number => cells[row + 1]?.[column + 1] ?? 0;
  const paper = median(ringOf(-1, MARKER_CELLS).map(([row, column]) => at(row, column)));
  const border = median(ringOf(0, MARKER_CELLS - 1).map(([row, column]) => at(row, column)));
  if (paper - border < LEAST_CONTRAST) return null;
  const middle = (paper + border) / 2;
  const bits = range(0, MARKER_CELLS).map((row) => range(0, MARKER_CELLS).map((column) => at(row, column) > middle));
  return bestMatch(bits, quad, paper - border);
}

function bestMatch(bits: readonly (readonly boolean[])[], quad: Quad, contrast: number): Decoded | null {
  let best: Decoded | null = null;
  for (let quarter = 0; quarter < 4; quarter += 1) {
    const corners = quad.map((_, k) => quad[(k + quarter) % 4]) as unknown as Quad;
    for (const marker of allMarkers()) {
      let wrongBits = 0;
      for (let row = 0; row < MARKER_CELLS && wrongBits <= MOST_WRONG_BITS; row += 1) {
        for (let column = 0; column < MARKER_CELLS; column += 1) {
          const [r, c] = turned(row, column, quarter);
          if (bits[r]?.[c] !== isWhite(marker, row, column)) wrongBits += 1;
        }
      }
      if (wrongBits <= MOST_WRONG_BITS && wrongBits < (best?.wrongBits ?? Number.POSITIVE_INFINITY)) {
        best = { id: marker.id, corners, wrongBits, contrast };
      }
    }
  }
  return best;
}

/** Where a cell of the marker lies when its upper left corner is the quadrilateral's corner number `quarter`. */
function turned(row: number, column: number, quarter: number): readonly [row: number, column: number] {
  const last = MARKER_CELLS - 1;
  if (quarter === 0) return [row, column];
  if (quarter === 1) return [column, last - row];
  if (quarter === 2) return [last - row, last - column];
  return [last - column, row];
}

/** Mean over nine points of the inner half of a cell. */
function cellBrightness(grey: Grey, toPicture: readonly number[], row: number, column: number): number {
  let sum = 0;
  for (const down of WITHIN_CELL) {
    for (const right of WITHIN_CELL) {
      const point: Vec2 = [(column + right) / MARKER_CELLS, (row + down) / MARKER_CELLS];
      const [x, y] = mapBy(toPicture, point);
      sum += brightnessAt(grey, x, y);
    }
  }
  return sum / WITHIN_CELL.length ** 2;
}

const WITHIN_CELL: readonly number[] = [0.3, 0.5, 0.7];

const range = (from: number, to: number): number[] => Array.from({ length: to - from }, (_, k) => from + k);

/** The cells of a square ring, each once. */
function ringOf(first: number, last: number): (readonly [row: number, column: number])[] {
  return range(first, last).flatMap((k) => [
    [first, k] as const,
    [k, last] as const,
    [last, first + last - k] as const,
    [first + last - k, first] as const,
  ]);
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? 0;
}
