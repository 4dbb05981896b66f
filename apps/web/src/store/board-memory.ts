// The Board over a reload of the page: what it showed, and the class as it was frozen, as its class file. One of each a
// device, of the class that was shown last.

import type { BoardState } from './board-state.ts';
import { NEW_BOARD } from './board-state.ts';

export function recallBoard(classId: string): BoardState {
  try {
    const kept = JSON.parse(localStorage.getItem(STATE) ?? '{}') as Partial<Kept>;
    if (kept.classId !== classId || kept.board === undefined) return NEW_BOARD;
    return { ...NEW_BOARD, ...kept.board };
  } catch {
    return NEW_BOARD;
  }
}

export function rememberBoard(classId: string, board: BoardState): void {
  const frozen = board.frozen === null ? null : { ...board.frozen, record: null };
  write(STATE, JSON.stringify({ classId, board: { ...board, frozen } } satisfies Kept));
  if (frozen === null) write(FROZEN, null);
}

/** False: this device has no room for it, or keeps nothing. */
export const keepFrozen = (file: string): boolean => write(FROZEN, file);

/** The class file of the frozen scores; null when there is none any more. */
export function keptFrozen(): string | null {
  try {
    return localStorage.getItem(FROZEN);
  } catch {
    return null;
  }
}

interface Kept {
  readonly classId: string;
  readonly board: BoardState;
}

const STATE = 'cairnmark.board';
const FROZEN = 'cairnmark.board.frozen';

function write(key: string, text: string | null): boolean {
  try {
    if (text === null) localStorage.removeItem(key);
    else localStorage.setItem(key, text);
    return true;
  } catch {
    return false;
  }
}
