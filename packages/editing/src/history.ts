// Undo and redo without end, of layouts or of whatever else is a value. Every step gives a new history; what it holds is
// shared, not copied.

export interface History<T> {
  readonly now: T;
  /** The step before; null at the beginning. */
  readonly before: History<T> | null;
  /** What was undone from here, the next one first; null when nothing was. */
  readonly undone: Undone<T> | null;
}

interface Undone<T> {
  readonly now: T;
  readonly next: Undone<T> | null;
}

export const begin = <T>(now: T): History<T> => ({ now, before: null, undone: null });

/** One step more. What was undone before it is gone; the same value again is no step. */
export const did = <T>(history: History<T>, now: T): History<T> =>
  now === history.now ? history : { now, before: history, undone: null };

/** The last step comes out otherwise: repeated nudges and the way of a drag are one step. At the beginning it is a step. */
export function replace<T>(history: History<T>, now: T): History<T> {
  const { before } = history;
  if (before === null) return did(history, now);
  return now === history.now ? history : { now, before, undone: null };
}

/** One step back; the same history at the beginning. */
export function undo<T>(history: History<T>): History<T> {
  const { before, now, undone } = history;
  return before === null ? history : { ...before, undone: { now, next: undone } };
}

/** One step forward again; the same history when nothing was undone. */
export function redo<T>(history: History<T>): History<T> {
  const { undone } = history;
  if (undone === null) return history;
  return { now: undone.now, before: { ...history, undone: null }, undone: undone.next };
}

export const canUndo = <T>({ before }: History<T>): boolean => before !== null;

export const canRedo = <T>({ undone }: History<T>): boolean => undone !== null;
