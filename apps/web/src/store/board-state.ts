// What the Board shows on this device: which ranking, how much of it, and whether it is frozen.

import type { ClassRecord } from '@cairnmark/engine';

/** Stands where else the id of a challenge does; ids have letters and digits only. */
export const WHOLE_DAY = '*';

export interface BoardState {
  /** Id of a challenge, or the whole day; null: the challenge at work. */
  readonly shown: string | null;
  readonly view: 'ranking' | 'graphs' | 'own';
  readonly placesHidden: boolean;
  /** How many places are revealed, the last one first, by what is shown; null: all are shown. */
  readonly reveal: Readonly<Record<string, number>> | null;
  readonly frozen: Frozen | null;
}

export interface Frozen {
  /** ISO 8601 with zone. */
  readonly since: string;
  /** The class at that moment; null after a reload, until it is read again. */
  readonly record: ClassRecord | null;
  /** Whether it outlasts a reload; `lost`: it was to, but cannot be read any more. */
  readonly copy: 'kept' | 'not-kept' | 'lost';
}

export const NEW_BOARD: BoardState = { shown: null, view: 'ranking', placesHidden: false, reveal: null, frozen: null };
