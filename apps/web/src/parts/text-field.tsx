// A field for a name, a word or a sentence of the teacher's own. It is taken when the field is left; what cannot be taken is
// told below, and the last text stays.

import { NAME_CHARACTERS_MOST } from '@cairnmark/formats';
import { useId, useState } from 'preact/hooks';
import { plainText } from '../store/plain-text.ts';
import './field.css';

export function TextField({
  label,
  hideLabel = false,
  value,
  most = NAME_CHARACTERS_MOST,
  empty,
  disabled = false,
  className = '',
  change,
}: {
  readonly label: string;
  readonly hideLabel?: boolean;
  /** null: several things have several. */
  readonly value: string | null;
  /** Characters; without it as many as a name may have. */
  readonly most?: number;
  /** Said of a text with nothing in it. */
  readonly empty: string;
  readonly disabled?: boolean;
  readonly className?: string;
  /** Takes the text, or gives the sentences of why not; a boolean where they are told elsewhere. */
  readonly change: (text: string) => readonly string[] | boolean;
}) {
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const [told, setTold] = useState<readonly string[]>([]);
  const settle = (): void => {
    if (typed === null) return;
    const text = plainText(typed).slice(0, most).trim();
    setTyped(null);
    // Several things keep what each of them has when nothing is typed for all.
    if (text === (value ?? '')) setTold([]);
    else setTold(text === '' ? [empty] : sentencesOf(change(text)));
  };
  return (
    <div className={`field text-field ${className}`}>
      <label htmlFor={id} className={hideLabel ? 'vh' : undefined}>
        {label}
      </label>
      <input
        id={id}
        className="in"
        type="text"
        value={typed ?? value ?? ''}
        maxLength={most}
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
          // Outside a form nothing else is meant, least of all a button that takes the focus now.
          if (event.currentTarget.form === null) event.preventDefault();
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

const sentencesOf = (answer: readonly string[] | boolean): readonly string[] =>
  typeof answer === 'boolean' ? [] : answer;
