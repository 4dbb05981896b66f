// Undo and redo of layouts, try by try, while the app is open.

import type { Layout } from '@cairnmark/geometry';

export interface LayoutHistory {
  readonly past: readonly Layout[];
  readonly future: readonly Layout[];
}

export const NO_HISTORY: LayoutHistory = { past: [], future: [] };
