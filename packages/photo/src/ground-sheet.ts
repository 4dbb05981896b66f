// The ground sheet: a page with eight square markers round a free area, which a photograph is measured by. Frame: mm, x
// right, y up, the origin in the middle of the page; the page lies on its long side, A4 and Letter alike.

import type { Vec2 } from '@cairnmark/geometry';
import { MARKER_CODES } from './marker-codes.ts';

export interface Marker {
  readonly id: number;
  /** Its middle. */
  readonly centreMm: Vec2;
  /** Its inner cells, row by row from the top and each from the left: 1 is white, 0 is black. */
  readonly code: string;
}

/** mm. Side of a marker with its black border. */
export const MARKER_SIDE_MM = 32;

/** Cells along a side: four of the code, and one of the border at each end. */
export const MARKER_CELLS = 6;

/** Pages of the sheet for forts, laid two by two: 0 and 1 are the upper ones, 2 and 3 the lower. */
export const FORT_PAGES = 4;

/**
 * The markers of a page, clockwise from its upper left corner: ids 0 to 7 on page 0, which is also the sheet of one page,
 * and the next eight on each further page of the sheet for forts. Throws RangeError for a page that there is not.
 */
export function markersOf(page: number): readonly Marker[] {
  if (!Number.isInteger(page) || page < 0 || page >= FORT_PAGES) throw new RangeError(`there is no page ${page}`);
  return CENTRES_MM.map((centreMm, k) => {
    const id = page * CENTRES_MM.length + k;
    return { id, centreMm, code: MARKER_CODES[id] ?? '' };
  });
}

/** Whether a cell is white; rows from the top and columns from the left, the border included: 0 to 5. */
export function isWhite({ code }: Marker, row: number, column: number): boolean {
  const inside = MARKER_CELLS - 2;
  const [r, c] = [row - 1, column - 1];
  return r >= 0 && c >= 0 && r < inside && c < inside && code[r * inside + c] === '1';
}

/** mm. All eight end 7.7 mm from the edge of a Letter page, the nearer of the two. */
const [ACROSS_MM, ALONG_MM] = [116, 78];

const CENTRES_MM: readonly Vec2[] = [
  [-ACROSS_MM, ALONG_MM],
  [0, ALONG_MM],
  [ACROSS_MM, ALONG_MM],
  [ACROSS_MM, 0],
  [ACROSS_MM, -ALONG_MM],
  [0, -ALONG_MM],
  [-ACROSS_MM, -ALONG_MM],
  [-ACROSS_MM, 0],
];
