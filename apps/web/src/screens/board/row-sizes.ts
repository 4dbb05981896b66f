// Tells the style sheet how many rows share the height of the screen, and how wide the names and the values are.

import type { CSSProperties } from 'preact';

/** `values`: as the last column shows them; "14 15/16 in" needs more room than "37.9 cm". */
export const rowSizes = (
  rows: number,
  names: readonly string[],
  values: readonly (string | null)[] = [],
): CSSProperties =>
  ({ '--rows': rows, '--letters': longest(names), '--value-letters': longest(values) }) as CSSProperties;

const longest = (texts: readonly (string | null)[]): number => Math.max(0, ...texts.map((text) => text?.length ?? 0));
