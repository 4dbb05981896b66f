// A typed name or sentence as a record takes it.

/** On one line, without control characters. Empty: nothing is left. */
export const plainText = (typed: string): string => typed.replace(/[\p{Cc}\s]+/gu, ' ').trim();
