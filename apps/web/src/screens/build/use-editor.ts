// The build at work as the screen edits it: commands in, layouts out, undo and redo, which piece is picked, what to tell.

import type { Bench, Command, Edited, Pieces } from '@cairnmark/editing';
import { canRedo, canUndo, edit } from '@cairnmark/editing';
import { useState } from 'preact/hooks';
import { useSession, useSessionStore } from '../../store/use-session.ts';
import type { At } from '../../store/where-at.ts';
import type { Refusal } from './drag-refusal.ts';
import { refusalOf } from './drag-refusal.ts';
import { withPieces } from './pieces-of-layout.ts';

/** What the last command came to, for the line that is read out. */
export type EditNote =
  | { readonly said: 'done'; readonly command: Command; readonly edited: Edited }
  | { readonly said: 'refused'; readonly why: Refusal };

export interface Editor {
  readonly pieces: Pieces;
  readonly bench: Bench;
  readonly picked: number | null;
  readonly note: EditNote | null;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  pick(piece: number | null): void;
  edit(command: Command): void;
  /** Tells why a piece was not put where it was let go. */
  refuse(why: Refusal): void;
  /** Takes away what was told last, so that the same is told anew. */
  hush(): void;
  undo(): void;
  redo(): void;
}

export function useEditor(at: At, bench: Bench): Editor {
  const layout = at.attempt?.layout;
  const pieces: Pieces = layout?.kind === 'laid-out' ? layout.pieces : NONE;
  const [told, setTold] = useState<Told>({ attempt: null, note: null });
  const [picked, setPicked] = useState<Picked>({ attempt: null, piece: null });
  const session = useSessionEdits();
  const id = at.attempt?.id ?? null;
  const tell = (note: EditNote | null): void => setTold({ attempt: session.attemptNow(), note });
  const history = id === null ? undefined : session.histories[id];
  // A piece that was picked in another try, or is gone, is not picked.
  const piece = picked.attempt === id && picked.piece !== null && picked.piece < pieces.length ? picked.piece : null;
  return {
    pieces,
    bench,
    picked: piece,
    note: told.attempt === id ? told.note : null,
    canUndo: history !== undefined && canUndo(history),
    canRedo: history !== undefined && canRedo(history),
    pick: (next) => setPicked({ attempt: id, piece: next }),
    edit: (command) => {
      const result = edit(pieces, command, bench);
      if (!result.ok) {
        tell({ said: 'refused', why: refusalOf(result.issues) });
        return;
      }
      // What changes nothing is no step that can be undone.
      if (result.value.pieces !== pieces) session.layOut(withPieces(layout, result.value.pieces));
      tell({ said: 'done', command, edited: result.value });
      setPicked({ attempt: session.attemptNow(), piece: result.value.piece });
    },
    refuse: (why) => tell({ said: 'refused', why }),
    hush: () => tell(null),
    undo: () => {
      tell(null);
      session.undo();
    },
    redo: () => {
      tell(null);
      session.redo();
    },
  };
}

/** What was told of another try says nothing of this one. */
interface Told {
  readonly attempt: string | null;
  readonly note: EditNote | null;
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
