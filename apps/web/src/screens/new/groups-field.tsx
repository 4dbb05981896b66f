// The groups of a class, typed or pasted as one list, with what was read from it.

import { GROUPS_MOST } from '@cairnmark/formats';
import { useId, useLayoutEffect, useRef } from 'preact/hooks';
import { usePlanWords } from '../../app/plan-words.ts';
import type { ReadNames } from '../../store/group-names.ts';

/** Lines in sight: a class has six groups or so. */
const LINES = 6;

export function GroupsField({
  text,
  read,
  missing,
  change,
}: {
  readonly text: string;
  readonly read: ReadNames;
  readonly missing: boolean;
  readonly change: (text: string) => void;
}) {
  const id = useId();
  const list = useRef<HTMLTextAreaElement>(null);
  // The list may be far above the button that asked for the class.
  useLayoutEffect(() => {
    if (missing) list.current?.focus();
  }, [missing]);
  const { say } = usePlanWords();
  return (
    <div className="field">
      <label htmlFor={id}>{say('class.groups-list')}</label>
      <textarea
        ref={list}
        id={id}
        className="in groups-list"
        rows={LINES}
        value={text}
        aria-invalid={missing || undefined}
        aria-describedby={`${id}-read`}
        autoComplete="off"
        spellcheck={false}
        onInput={({ currentTarget }) => change(currentTarget.value)}
      />
      <div id={`${id}-read`} role="status" className="groups-read">
        {missing && <p className="oops">{say('class.groups-missing')}</p>}
        <p className="mut">
          {read.names.length === 1 ? say('class.group-read') : say('class.groups-read', { count: read.names.length })}
        </p>
        {read.twice.length > 0 && <p className="oops">{say('class.groups-twice', { names: read.twice.join(', ') })}</p>}
        {read.tooMany.length > 0 && (
          <p className="oops">{say('class.groups-most', { most: GROUPS_MOST, names: read.tooMany.join(', ') })}</p>
        )}
        {read.tooLong.map((name) => (
          <p key={name} className="oops">
            {say('class.group-too-long', { name: `${name.slice(0, 20)}…` })}
          </p>
        ))}
      </div>
    </div>
  );
}
