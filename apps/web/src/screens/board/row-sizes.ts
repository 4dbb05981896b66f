// Tells the style sheet how many rows share the height of the screen, and how wide the names are.

import type { CSSProperties } from 'preact';

export const rowSizes = (rows: number, names: readonly string[]): CSSProperties =>
  ({ '--rows': rows, '--letters': Math.max(0, ...names.map((name) => name.length)) }) as CSSProperties;
