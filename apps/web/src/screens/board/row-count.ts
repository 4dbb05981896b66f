// Tells the style sheet how many rows share the height of the screen.

import type { CSSProperties } from 'react';

export const rowCount = (rows: number): CSSProperties => ({ '--rows': rows }) as CSSProperties;
