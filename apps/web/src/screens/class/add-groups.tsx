// A group that comes late, or several from a list.

import { GROUPS_MOST } from '@cairnmark/formats';
import { useId, useRef, useState } from 'preact/hooks';
import { usePlanWords } from '../../app/plan-words.ts';
import { readNames } from '../../store/group-names.ts';

export function AddGroups({
  names,
  add,
}: {
  /** Of the groups that are there. */
  readonly names: readonly string[];
  readonly add: (names: readonly string[]) => void;
}) {
  const { say } = usePlanWords();
  const id = useId();
  const input = useRef<HTMLInputElement>(null);
  const [typed, setTyped] = useState('');
  const [told, setTold] = useState('');
  const submit = (): void => {
    const read = readNames(typed, names);
    const left = [...read.twice, ...read.tooLong, ...read.tooMany];
    if (read.names.length > 0) add(read.names);
    setTyped(left.join(', '));
    setTold(
      [
        ...(read.twice.length > 0 ? [say('class.groups-twice', { names: read.twice.join(', ') })] : []),
        ...read.tooLong.map((name) => say('class.group-too-long', { name: `${name.slice(0, 20)}…` })),
        ...(read.tooMany.length > 0
          ? [say('class.groups-most', { most: GROUPS_MOST, names: read.tooMany.join(', ') })]
          : []),
        ...(read.names.length === 0 && left.length === 0 ? [say('class.groups-missing')] : []),
      ].join(' '),
    );
    input.current?.focus();
  };
  return (
    <form
      className="add-groups"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        submit();
      }}
    >
      <div className="field">
        <label htmlFor={id}>{say('class.late')}</label>
        <input
          ref={input}
          id={id}
          className="in"
          value={typed}
          autoComplete="off"
          aria-describedby={`${id}-answer`}
          onInput={({ currentTarget }) => setTyped(currentTarget.value)}
        />
      </div>
      <button type="submit" className="btn">
        {say('class.add')}
      </button>
      <p role="status" id={`${id}-answer`} className="oops">
        {told}
      </p>
    </form>
  );
}
