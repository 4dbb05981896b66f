// The groups of the class: named, joined, taken out, and one that comes late. The last change can be taken back.

import type { ClassRecord } from '@cairnmark/engine';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { usePlanWords } from '../../app/plan-words.ts';
import { AddGroups } from './add-groups.tsx';
import { GroupRow } from './group-row.tsx';
import { JoinGroups } from './join-groups.tsx';
import { useGroups } from './use-groups.ts';

export function Groups({ record }: { readonly record: ClassRecord }) {
  const { say } = usePlanWords();
  const groups = useGroups(record);
  const section = useRef<HTMLElement>(null);
  const undo = useRef<HTMLButtonElement>(null);
  // The button that was pressed went with its group: its focus comes here.
  useLayoutEffect(() => undo.current?.focus(), [groups.done]);
  return (
    <section className="sec class-groups" ref={section}>
      <h2>{say('class.groups', { count: record.groups.length })}</h2>
      <p role="status" className={groups.done === null ? 'vh' : 'note undo-line'}>
        {groups.done !== null && (
          <>
            <span>{groups.done}</span>
            <button
              ref={undo}
              type="button"
              className="btn"
              onClick={() => {
                groups.undo();
                section.current?.querySelector('input')?.focus();
              }}
            >
              {say('class.undo')}
            </button>
          </>
        )}
      </p>
      <ul>
        {record.groups.map((group) => (
          <GroupRow key={group.id} group={group} record={record} groups={groups} />
        ))}
      </ul>
      <AddGroups names={record.groups.map(({ name }) => name)} add={groups.add} />
      <JoinGroups record={record} joining={groups} />
    </section>
  );
}
