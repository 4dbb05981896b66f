// A field for a word of the teacher's own: the name of a kind, of the kit, of a surface. It is taken when the field is left;
// what cannot be taken is told below, and the last word stays.

import { NAME_CHARACTERS_MOST } from '@cairnmark/formats';
import { useId, useState } from 'preact/hooks';
import { plainName } from '../../store/group-names.ts';

export function WordField({
  label,
  hideLabel = false,
  value,
  disabled = false,
  change,
}: {
  readonly label: string;
  readonly hideLabel?: boolean;
  /** null: several kinds have several. */
  readonly value: string | null;
  readonly disabled?: boolean;
  /** Takes the word, or gives the sentences of why not. */
  readonly change: (word: string) => readonly string[];
}) {
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const [told, setTold] = useState<readonly string[]>([]);
  const settle = (): void => {
    if (typed === null) return;
    const word = plainName(typed);
    const refused = word === value || (word === '' && value === null) ? [] : change(word);
    setTold(refused);
    setTyped(null);
  };
  return (
    <div className="field kit-word-field">
      <label htmlFor={id} className={hideLabel ? 'vh' : undefined}>
        {label}
      </label>
      <input
        id={id}
        className="in"
        value={typed ?? value ?? ''}
        maxLength={NAME_CHARACTERS_MOST}
        autoComplete="off"
        enterKeyHint="done"
        disabled={disabled}
        aria-invalid={told.length > 0 || undefined}
        aria-describedby={`${id}-answer`}
        onInput={({ currentTarget }) => {
          setTyped(currentTarget.value);
          setTold([]);
        }}
        onBlur={settle}
        onKeyDown={(event) => {
          if (event.key === 'Escape') setTyped(null);
          if (event.key !== 'Enter') return;
          settle();
          // Nothing else is meant, least of all a button that takes the focus now.
          event.preventDefault();
        }}
      />
      <div role="status" id={`${id}-answer`} className="field-answer">
        {told.map((sentence) => (
          <p key={sentence} className="oops">
            {sentence}
          </p>
        ))}
      </div>
    </div>
  );
}
