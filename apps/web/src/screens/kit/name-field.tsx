// A field for a word of the teacher's own: the name of a kind, of the kit, of a surface. It is taken when the field is left;
// what cannot be taken is told below, and the last word stays.

import { NAME_CHARACTERS_MOST } from '@cairnmark/formats';
import { useId, useState } from 'preact/hooks';

export function NameField({
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
  readonly change: (name: string) => readonly string[];
}) {
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const [told, setTold] = useState<readonly string[]>([]);
  const settle = (): void => {
    if (typed === null) return;
    const name = plainName(typed);
    const refused = name === value || (name === '' && value === null) ? [] : change(name);
    setTold(refused);
    setTyped(null);
  };
  return (
    <div className="field kit-name-field">
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
        onKeyDown={({ key }) => {
          if (key === 'Escape') setTyped(null);
          if (key === 'Enter') settle();
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

/** Without signs that cannot be seen, and without blanks around it. */
export const plainName = (typed: string): string =>
  typed
    .replace(/\p{Cc}/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim();
