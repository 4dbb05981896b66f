// Which marker a quadrilateral of the picture shows, and which way round it lies.

import { isWhite, MARKER_CELLS } from '../ground-sheet.ts';
import type { Grey } from '../image/photo.ts';
import { allMarkers } from '../marker-list.ts';
import { LEAST_CONTRAST, MOST_WRONG_BITS } from '../tolerance.ts';
import { cellsOf, paperAndBorder } from './cells.ts';
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
  const cells = cellsOf(grey, quad);
  const { paper, border } = paperAndBorder(cells);
  const contrast = paper - border;
  if (contrast < LEAST_CONTRAST) return null;
  const middle = (paper + border) / 2;
  const bits = cells.slice(1, -1).map((row) => row.slice(1, -1).map((brightness) => brightness > middle));
  return bestMatch(bits, quad, contrast);
}

function bestMatch(bits: readonly (readonly boolean[])[], quad: Quad, contrast: number): Decoded | null {
  let best: Decoded | null = null;
  for (let quarter = 0; quarter < 4; quarter += 1) {
    const corners = begunAt(quad, quarter);
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

function begunAt([a, b, c, d]: Quad, quarter: number): Quad {
  if (quarter === 0) return [a, b, c, d];
  return begunAt([b, c, d, a], quarter - 1);
}

/** Where a cell of the marker lies when its upper left corner is the quadrilateral's corner number `quarter`. */
function turned(row: number, column: number, quarter: number): readonly [row: number, column: number] {
  const last = MARKER_CELLS - 1;
  if (quarter === 0) return [row, column];
  return turned(column, last - row, quarter - 1);
}
