// The text of a field while somebody types in it. It is read when the field is left; until then, and when it cannot be
// read, the stored value stays as it is.

import { useState } from 'preact/hooks';
import type { WrittenUnit } from './length-text.ts';
import type { Entry, Limits } from './number-entry.ts';
import { entryOf, within } from './number-entry.ts';

export interface TypedField {
  readonly text: string;
  /** What is wrong or asked; null: nothing, or somebody is still typing. */
  readonly open: Exclude<Entry, { kind: 'taken' }> | null;
  type(text: string): void;
  settle(): void;
  /** Takes one of two meanings. */
  mean(value: number): void;
  /** Back to the stored value. */
  forget(): void;
}

/** `shown`: the text of the stored value. An emptied field is `clear`ed where that is allowed. */
export function useTypedNumber(
  shown: string,
  units: readonly WrittenUnit[],
  limits: Limits,
  change: (value: number) => void,
  clear: (() => void) | undefined,
): TypedField {
  const [typed, setTyped] = useState<string | null>(null);
  const [open, setOpen] = useState<TypedField['open']>(null);
  const forget = (): void => {
    setTyped(null);
    setOpen(null);
  };
  const take = (entry: Entry): void => {
    if (entry.kind !== 'taken') setOpen(entry);
    else {
      forget();
      change(entry.value);
    }
  };
  return {
    text: typed ?? shown,
    open,
    forget,
    type: (text) => {
      setTyped(text);
      setOpen(null);
    },
    settle: () => {
      if (typed === null) return;
      if (typed.trim() === shown) forget();
      else if (typed.trim() === '' && clear !== undefined) {
        forget();
        clear();
      } else take(entryOf(typed, units, limits));
    },
    mean: (value) => take(within(value, limits)),
  };
}
