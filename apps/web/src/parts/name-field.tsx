// A field for a name: of a class, a group, a challenge. What somebody types stays until the field is left; an empty name is
// refused, and the last one stays.

import { NAME_CHARACTERS_MOST } from '@cairnmark/formats';
import { useId, useState } from 'preact/hooks';
import { usePlanWords } from '../app/plan-words.ts';
import { plainName } from '../store/group-names.ts';

export function NameField({
  label,
  hideLabel = false,
  name,
  change,
}: {
  readonly label: string;
  readonly hideLabel?: boolean;
  readonly name: string;
  readonly change: (name: string) => void;
}) {
  const id = useId();
  const { say } = usePlanWords();
  const [typed, setTyped] = useState<string | null>(null);
  const [refused, setRefused] = useState(false);
  const settle = (): void => {
    if (typed === null) return;
    const plain = plainName(typed);
    setRefused(plain === '');
    setTyped(null);
    if (plain !== '' && plain !== name) change(plain);
  };
  return (
    <div className="field name-field">
      <label htmlFor={id} className={hideLabel ? 'vh' : undefined}>
        {label}
      </label>
      <input
        id={id}
        className="in"
        value={typed ?? name}
        maxLength={NAME_CHARACTERS_MOST}
        autoComplete="off"
        enterKeyHint="done"
        aria-describedby={`${id}-answer`}
        onInput={({ currentTarget }) => setTyped(currentTarget.value)}
        onBlur={settle}
        onKeyDown={(event) => {
          if (event.key === 'Escape') setTyped(null);
          if (event.key !== 'Enter') return;
          settle();
          // Outside a form nothing else is meant.
          if (event.currentTarget.form === null) event.preventDefault();
        }}
      />
      <p role="status" id={`${id}-answer`} className="oops">
        {refused ? say('class.name-empty', { kept: name }) : ''}
      </p>
    </div>
  );
}
