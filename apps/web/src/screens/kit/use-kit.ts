// What all parts of the Kit screen share: the kit at work, the words of the class, and the one way to change the kit.

import type { FileIssue } from '@cairnmark/formats';
import type { Solid } from '@cairnmark/geometry';
import type { PlanWords } from '@cairnmark/words';
import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { BuildWords } from '../../app/use-build-words.ts';
import type { Change } from '../../store/class-changes.ts';
import type { KitUse } from '../../store/kit-scope.ts';
import type { At } from '../../store/where-at.ts';

/** A change that was made last, with the way back. */
export interface Done {
  readonly text: string;
  readonly back: Change;
  /** A kind that was taken away, and the place in the table where it stood. */
  readonly gone: number | null;
}

export interface KitAtWork extends BuildWords {
  readonly at: At;
  readonly say: PlanWords['say'];
  readonly use: KitUse;
  /** Of each kind of the kit, in the kit's sizes. */
  readonly solids: ReadonlyMap<string, Solid>;
  /** px a mm, one for all drawings. */
  readonly scale: number;
  readonly done: Done | null;
  /** Says what was taken back last, until the next change; null: nothing was. */
  readonly undone: string | null;
  /** Makes a change that is told as `text`, or gives the sentences of why not. `gone`: see `Done`. */
  make(change: Change, text: string, gone?: number): readonly string[];
  undo(): void;
  /** What is wrong, as a sentence beside the field where it was typed. */
  told(issues: readonly FileIssue[]): readonly string[];
}

export const KitContext = createContext<KitAtWork | null>(null);

export function useKit(): KitAtWork {
  const kit = useContext(KitContext);
  if (kit === null) throw new RangeError('no kit above this part');
  return kit;
}
