// One group: its name, how much it has done, and the ways to join it with another or to take it out.

import type { ClassRecord, Group } from '@cairnmark/engine';
import { usePlanWords } from '../../app/plan-words.ts';
import { TextField } from '../../parts/text-field.tsx';
import type { Groups } from './use-groups.ts';

export function GroupRow({
  group,
  record,
  groups,
}: {
  readonly group: Group;
  readonly record: ClassRecord;
  readonly groups: Groups;
}) {
  const { say } = usePlanWords();
  const tries = record.attempts.filter((attempt) => attempt.group === group.id).length;
  // A class without any group has nobody at work.
  const isLast = record.groups.length === 1;
  return (
    <li className="group-row">
      <TextField
        label={say('class.group-name')}
        hideLabel
        value={group.name}
        empty={say('class.name-empty', { kept: group.name })}
        change={(name) => groups.rename(group, name)}
      />
      <span className="mut">{tries === 1 ? say('class.one-try') : say('class.tries', { count: tries })}</span>
      <button
        type="button"
        className="btn"
        aria-disabled={isLast}
        onClick={() => {
          if (!isLast) groups.startJoining(group);
        }}
      >
        {say('class.join')}
        <span className="vh"> {group.name}</span>
      </button>
      <button
        type="button"
        className="btn"
        aria-disabled={isLast}
        onClick={() => {
          if (!isLast) groups.takeOut(group);
        }}
      >
        {say('class.take-out')}
        <span className="vh"> {group.name}</span>
      </button>
    </li>
  );
}
