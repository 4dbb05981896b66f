// A row of the record sheet: the last try of a group, and how what is typed gets into it.

import type { Attempt, Group } from '@cairnmark/engine';
import { attemptsOf } from '../../store/class-changes.ts';
import { nowWithZone } from '../../store/clock.ts';
import { useEdit } from '../../store/edit-class.ts';
import { beginTry, onSheet } from '../../store/sheet-changes.ts';
import type { SheetData } from './sheet.ts';

export interface Row {
  /** null: the group has not begun. */
  readonly attempt: Attempt | null;
  /** From 1. */
  readonly number: number;
  /** False of a group that is absent or does not take part. */
  readonly built: boolean;
  type(edit: (attempt: Attempt) => Attempt): void;
  begin(): void;
}

export function useRow({ record, challenge }: SheetData, group: Group): Row {
  const edit = useEdit();
  const tries = attemptsOf(record, group.id, challenge.id);
  const attempt = tries.at(-1) ?? null;
  const cell = () => ({ group: group.id, challenge: challenge.id, at: nowWithZone() });
  return {
    attempt,
    number: Math.max(tries.length, 1),
    built: attempt?.state.kind !== 'absent' && attempt?.state.kind !== 'not-taking-part',
    type: (change) => {
      edit(onSheet(cell(), change));
    },
    begin: () => {
      edit(beginTry(cell()));
    },
  };
}
