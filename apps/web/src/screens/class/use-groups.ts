// What the teacher does with the groups, with the last thing that was done and the way back from it.

import type { ClassRecord, Group } from '@cairnmark/engine';
import { useRef, useState } from 'preact/hooks';
import { usePlanWords } from '../../app/plan-words.ts';
import { useWords } from '../../app/use-words.ts';
import type { Change } from '../../store/class-changes.ts';
import { useEdit } from '../../store/edit-class.ts';
import { addGroups, mergeGroups, removeGroup, renameGroup } from '../../store/group-changes.ts';
import { isAmong } from '../../store/group-names.ts';
import { useSession, useSessionStore } from '../../store/use-session.ts';

export interface Groups {
  /** What was done last, as long as it can be taken back; null: nothing. */
  readonly done: string | null;
  /** The group that is about to be joined with another; null: none. */
  readonly joining: Group | null;
  undo(): void;
  add(names: readonly string[]): void;
  /** Gives the sentences of why not, where it was refused. */
  rename(group: Group, name: string): readonly string[];
  startJoining(group: Group | null): void;
  join(into: Group): void;
  takeOut(group: Group): void;
}

interface Done {
  readonly text: string;
  readonly before: ClassRecord;
  readonly after: ClassRecord;
}

export function useGroups(record: ClassRecord): Groups {
  const { say } = usePlanWords();
  const { issue } = useWords();
  const edit = useEdit();
  const store = useSessionStore();
  const place = useSession((session) => session.place);
  const goTo = useSession((session) => session.goTo);
  const [done, setDone] = useState<Done | null>(null);
  const [joining, setJoining] = useState<Group | null>(null);
  const placeBefore = useRef(place);
  const make = (text: string, change: Change): boolean => {
    const { record: before } = store.getState();
    const refused = edit(change).length > 0;
    const { record: after } = store.getState();
    if (refused || before === null || after === null || after === before) return false;
    placeBefore.current = place;
    setDone({ text, before, after });
    return true;
  };
  /** Whoever was at work in a group that is no more goes on in another. */
  const leave = (gone: Group, to: Group | undefined): void => {
    if (place?.group === gone.id && to !== undefined) goTo({ group: to.id });
  };
  return {
    done: done?.after === record ? done.text : null,
    joining: record.groups.find(({ id }) => id === joining?.id) ?? null,
    undo: () => {
      if (done?.after !== record) return;
      edit(() => done.before);
      if (placeBefore.current !== null) goTo({ group: placeBefore.current.group });
    },
    add: (names) => {
      edit(addGroups(names));
    },
    rename: (group, name) => {
      const others = record.groups.filter(({ id }) => id !== group.id).map((one) => one.name);
      if (isAmong(name, others)) return [say('class.name-taken', { name, kept: group.name })];
      return edit(renameGroup(group.id, name)).map(issue);
    },
    startJoining: setJoining,
    join: (into) => {
      if (joining === null) return;
      const text = say('class.joined', { from: joining.name, into: into.name });
      if (make(text, mergeGroups(joining.id, into.id))) leave(joining, into);
      setJoining(null);
    },
    takeOut: (group) => {
      const next = record.groups.find(({ id }) => id !== group.id);
      if (make(say('class.taken-out', { group: group.name }), removeGroup(group.id))) leave(group, next);
    },
  };
}
