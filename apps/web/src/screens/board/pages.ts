// A long board is shown page by page, so that it can be read from the last row of the room.

/** However large the screen is. */
export const MOST_ROWS = 12;

/** Pages of at most `most` rows, as even as can be; one page even when there is no row. */
export function pagesOf<T>(rows: readonly T[], most: number): readonly (readonly T[])[] {
  const count = Math.max(1, Math.ceil(rows.length / most));
  const length = Math.ceil(rows.length / count);
  return Array.from({ length: count }, (_, page) => rows.slice(page * length, (page + 1) * length));
}

/** The page, counted from 0, that holds the first row of the kind; the first page when none is. */
export function pageWith<T>(pages: readonly (readonly T[])[], is: (row: T) => boolean): number {
  return Math.max(
    0,
    pages.findIndex((page) => page.some(is)),
  );
}
