// A typed text as a record takes it.

/** Without control characters, trimmed, no longer than `most` characters. Empty when nothing is left. */
export const plainText = (typed: string, most: number): string =>
  typed
    .replace(/\p{Cc}+/gu, ' ')
    .trim()
    .slice(0, most)
    .trim();
