// Writes the class to the storage, one write after another, and tells whether all of it is kept.

import type { ClassRecord } from '@cairnmark/engine';
import { nowWithZone } from './clock.ts';
import type { ClassStorage, Kept } from './storage.ts';
import { changesBetween } from './storage.ts';

export interface Keeper {
  /** Writes what differs from what the storage holds. */
  keep(classId: string, record: ClassRecord): void;
  /** The storage holds this already. */
  holds(classId: string, record: ClassRecord): void;
  /** Takes the class out of the storage, once everything that was on its way there has arrived. */
  erase(classId: string): Promise<Kept>;
}

export function createKeeper(storage: ClassStorage, tell: (saved: Kept | 'saving') => void): Keeper {
  let writing: Promise<unknown> = Promise.resolve();
  // What the storage holds. What it once refused is in the next changes again.
  let held: { readonly classId: string; readonly record: ClassRecord } | null = null;
  const write = async (classId: string, record: ClassRecord): Promise<Kept> => {
    const before = held?.classId === classId ? held.record : null;
    const saved = await storage.keep(classId, changesBetween(before, record), nowWithZone());
    if (saved === 'kept') held = { classId, record };
    return saved;
  };
  return {
    keep: (classId, record) => {
      tell('saving');
      const turn = writing.then(() => write(classId, record));
      writing = turn;
      void turn.then((saved) => {
        if (writing === turn) tell(saved);
      });
    },
    holds: (classId, record) => {
      held = { classId, record };
    },
    erase: async (classId) => {
      const turn = writing.then(() => storage.remove(classId));
      writing = turn;
      const erased = await turn;
      if (erased === 'kept' && held?.classId === classId) held = null;
      return erased;
    },
  };
}
