// Changes to a class by its editors. Whatever somebody types, the class stays one that can be kept and read back: a change
// that would spoil it is refused with its faults, and the class stays as it was.

import type { FileIssue } from '@cairnmark/formats';
import { faultsOf } from '@cairnmark/formats';
import type { Change } from './class-changes.ts';
import type { SessionStore } from './session.ts';
import { useSessionStore } from './use-session.ts';

export type Edit = (change: Change) => readonly FileIssue[];

export function useEdit(): Edit {
  const store = useSessionStore();
  return (change) => edit(store, change);
}

/** Does a change and gives [], or gives what would be wrong with the class and changes nothing. */
export function edit(store: SessionStore, change: Change): readonly FileIssue[] {
  const { record, change: make } = store.getState();
  if (record === null) return [];
  const after = change(record);
  if (after === record) return [];
  const faults = faultsOf('class', after);
  if (faults.length === 0) make(() => after);
  return faults;
}
