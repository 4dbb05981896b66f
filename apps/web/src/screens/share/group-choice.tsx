// Which group of this class a try belongs to that comes from a group unknown here.

import type { ClassRecord } from '@cairnmark/engine';
import { useId } from 'preact/hooks';
import { usePlanWords } from '../../app/plan-words.ts';

export function GroupChoice({
  record,
  unknown,
  chosen,
  choose,
}: {
  readonly record: ClassRecord;
  readonly unknown: string;
  readonly chosen: string | null;
  readonly choose: (id: string | null) => void;
}) {
  const { say } = usePlanWords();
  const id = useId();
  return (
    <div className="field note">
      <p>{say('share.group-unknown', { group: unknown })}</p>
      <label htmlFor={id}>{say('share.group-choose')}</label>
      <select
        id={id}
        className="in"
        value={chosen ?? ''}
        onChange={({ currentTarget }) => choose(currentTarget.value === '' ? null : currentTarget.value)}
      >
        <option value="">{say('share.group-none')}</option>
        {record.groups.map((group) => (
          <option key={group.id} value={group.id}>
            {group.name}
          </option>
        ))}
      </select>
    </div>
  );
}
