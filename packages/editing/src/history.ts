// Undo and redo without end. A history is a value: every step gives a new one, and layouts in it are shared, not copied.

import type { Pieces } from './types.ts';

export interface History {
  readonly pieces: Pieces;
  /** The step before; null at the beginning. */
  readonly before: History | null;
  /** What was undone from here, the next one first; null when nothing was. */
  readonly undone: Undone | null;
}

interface Undone {
  readonly pieces: Pieces;
  readonly next: Undone | null;
}

export const begin = (pieces: Pieces): History => ({ pieces, before: null, undone: null });

/** One step more. What was undone before it is gone; the same pieces again are no step. */
export const did = (history: History, pieces: Pieces): History =>
  pieces === history.pieces ? history : { pieces, before: history, undone: null };

/** The last step comes out otherwise: repeated nudges and the way of a drag are one step. At the beginning it is a step. */
export function replace(history: History, pieces: Pieces): History {
  const { before } = history;
  if (before === null) return did(history, pieces);
  return pieces === history.pieces ? history : { pieces, before, undone: null };
}

/** One step back; the same history at the beginning. */
export function undo(history: History): History {
  const { before, pieces, undone } = history;
  return before === null ? history : { ...before, undone: { pieces, next: undone } };
}

/** One step forward again; the same history when nothing was undone. */
export function redo(history: History): History {
  const { undone } = history;
  if (undone === null) return history;
  return { pieces: undone.pieces, before: { ...history, undone: null }, undone: undone.next };
}

export const canUndo = ({ before }: History): boolean => before !== null;

export const canRedo = ({ undone }: History): boolean => undone !== null;
