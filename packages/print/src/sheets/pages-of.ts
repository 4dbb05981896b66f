// A list dealt out over pages of so many rows, the last one filled up with nothing.

/** At least one page; `null` stands for a row that is left empty. */
export function pagesOf<T>(items: readonly T[], rows: number): readonly (readonly (T | null)[])[] {
  const count = Math.max(1, Math.ceil(items.length / rows));
  return Array.from({ length: count }, (_, page) =>
    Array.from({ length: rows }, (__, row) => items[page * rows + row] ?? null),
  );
}
