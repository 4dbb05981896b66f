// How many rows a window holds without scrolling, and when they stand so close that marks between them go to the side.
// Heights px; the style sheet shares the rest of the height among the rows by the same figures.

import { MOST_ROWS } from './pages.ts';

export interface Fit {
  /** Rows a page. */
  readonly most: number;
  /** Height that all rows of a page share; without end where they are stacked. */
  readonly shared: number;
}

export function fitOf(width: number, height: number): Fit {
  // In the stacked form of small screens the page scrolls anyway.
  if (width <= STACKED_WIDTH) return { shared: Number.POSITIVE_INFINITY, most: MOST_ROWS };
  const isLarge = width >= LARGE.width && height >= LARGE.height;
  const { around, row } = isLarge ? LARGE : SMALL;
  const shared = height - around;
  return { shared, most: Math.min(MOST_ROWS, Math.max(FEWEST_ROWS, Math.floor(shared / row))) };
}

export const isDense = (rows: number, { shared }: Fit): boolean => shared / Math.max(FEWEST_ROWS, rows) < ROOMY_ROW;

/** Fewer would turn pages more than they show. */
const FEWEST_ROWS = 6;
/** A row of this height has room for a mark on its line. */
const ROOMY_ROW = 64;
const STACKED_WIDTH = 900;
/** Head, ruler and legend, and the least height of a row with its large figures. */
const LARGE = { width: 1600, height: 860, around: 402, row: 56 };
const SMALL = { around: 358, row: 48 };
