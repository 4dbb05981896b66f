// Which group somebody asks about, and the dialog that answers.

import type { RefObject } from 'preact';
import { useRef, useState } from 'preact/hooks';

export interface Asked {
  readonly dialog: RefObject<HTMLDialogElement>;
  /** null: nobody has asked yet. */
  readonly group: string | null;
  readonly ask: (group: string) => void;
}

export function useAsked(): Asked {
  const dialog = useRef<HTMLDialogElement>(null);
  const [group, setGroup] = useState<string | null>(null);
  const ask = (of: string): void => {
    setGroup(of);
    dialog.current?.showModal();
  };
  return { dialog, group, ask };
}
