// Freezing: the board keeps the class as it was at one moment, over other screens and over a reload of the page.

import type { ClassRecord } from '@cairnmark/engine';
import { useEffect } from 'preact/hooks';
import { keepFrozen, keptFrozen } from '../../store/board-memory.ts';
import type { Frozen } from '../../store/board-state.ts';
import { nowWithZone } from '../../store/clock.ts';
import { useSession } from '../../store/use-session.ts';

export interface Freezing {
  readonly frozen: Frozen | null;
  /** The class whose scores are shown; null while the frozen one is read, or when it cannot be. */
  readonly record: ClassRecord | null;
  freeze(): void;
  unfreeze(): void;
}

export function useFrozen(now: ClassRecord): Freezing {
  const frozen = useSession((session) => session.board.frozen);
  const showOnBoard = useSession((session) => session.showOnBoard);
  const toRead = frozen !== null && frozen.record === null && frozen.copy !== 'lost';
  useEffect(() => {
    if (!toRead || frozen === null) return;
    let here = true;
    void readFrozen().then((record) => {
      if (here) showOnBoard({ frozen: record === null ? { ...frozen, copy: 'lost' } : { ...frozen, record } });
    });
    return () => {
      here = false;
    };
  }, [toRead, frozen, showOnBoard]);
  return {
    frozen,
    record: frozen === null ? now : frozen.record,
    freeze: () => {
      const since = nowWithZone();
      void import('../../store/class-file.ts').then(({ writeClass }) => {
        const copy = keepFrozen(writeClass(now)) ? 'kept' : 'not-kept';
        showOnBoard({ frozen: { since, record: now, copy } });
      });
    },
    unfreeze: () => showOnBoard({ frozen: null }),
  };
}

async function readFrozen(): Promise<ClassRecord | null> {
  const text = keptFrozen();
  if (text === null) return null;
  const { readClass } = await import('../../store/class-file.ts');
  const read = readClass(text);
  return read.ok ? read.value : null;
}
