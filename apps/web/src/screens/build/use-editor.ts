// The build at work as the screen edits it: commands in, layouts out, undo and redo, which piece is picked, what to tell.

import type { Bench, Command, Edited, EditIssue, Pieces } from '@cairnmark/editing';
import { canRedo, canUndo, edit } from '@cairnmark/editing';
import { useState } from 'preact/hooks';
import type { At } from '../../store/session.ts';
import { useSession, useSessionStore } from '../../store/use-session.ts';

/** What the last command came to, for the line that is read out. */
export type EditNote =
  | { readonly said: 'done'; readonly command: Command; readonly edited: Edited }
  | { readonly said: 'refused'; readonly issues: readonly EditIssue[] };

export interface Editor {
  readonly pieces: Pieces;
  readonly bench: Bench;
  readonly picked: number | null;
  readonly note: EditNote | null;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  pick(piece: number | null): void;
  edit(command: Command): void;
  undo(): void;
  redo(): void;
}

export function useEditor(at: At, bench: Bench): Editor {
  const layout = at.attempt?.layout;
  const pieces: Pieces = layout?.kind === 'laid-out' ? layout.pieces : NONE;
  const [note, setNote] = useState<EditNote | null>(null);
  const [picked, setPicked] = useState<Picked>({ attempt: null, piece: null });
  const session = useSessionEdits();
  const id = at.attempt?.id ?? null;
  const history = id === null ? undefined : session.histories[id];
  // A piece that was picked in another try, or is gone, is not picked.
  const piece = picked.attempt === id && picked.piece !== null && picked.piece < pieces.length ? picked.piece : null;
  return {
    pieces,
    bench,
    picked: piece,
    note,
    canUndo: history !== undefined && canUndo(history),
    canRedo: history !== undefined && canRedo(history),
    pick: (next) => setPicked({ attempt: id, piece: next }),
    edit: (command) => {
      const result = edit(pieces, command, bench);
      if (!result.ok) {
        setNote({ said: 'refused', issues: result.issues });
        return;
      }
      session.layOut({ kind: 'laid-out', pieces: result.value.pieces });
      setNote({ said: 'done', command, edited: result.value });
      setPicked({ attempt: session.attemptNow(), piece: result.value.piece });
    },
    undo: session.undo,
    redo: session.redo,
  };
}

interface Picked {
  readonly attempt: string | null;
  readonly piece: number | null;
}

const NONE: Pieces = [];

function useSessionEdits() {
  const store = useSessionStore();
  return {
    histories: useSession((session) => session.histories),
    layOut: useSession((session) => session.layOut),
    undo: useSession((session) => session.undo),
    redo: useSession((session) => session.redo),
    /** The first command of a group begins its try. */
    attemptNow: () => store.getState().place?.attempt ?? null,
  };
}
