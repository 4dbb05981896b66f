// A field for a name or a sentence. It is taken when the field is left; an empty one keeps the last text.

import { useId, useState } from 'preact/hooks';
import { useForm } from './form.ts';
import { plainText } from './plain-text.ts';

export function TextField({
  label,
  value,
  most,
  change,
  className = '',
}: {
  readonly label: string;
  readonly value: string;
  /** Characters. */
  readonly most: number;
  readonly change: (text: string) => void;
  readonly className?: string;
}) {
  const { say } = useForm();
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const [empty, setEmpty] = useState(false);
  const settle = (): void => {
    if (typed === null) return;
    const text = plainText(typed, most);
    setEmpty(text === '');
    setTyped(null);
    if (text !== '' && text !== value) change(text);
  };
  return (
    <div className={`field ${className}`}>
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        className="in"
        type="text"
        autoComplete="off"
        enterKeyHint="done"
        maxLength={most}
        value={typed ?? value}
        aria-describedby={`${id}-answer`}
        onInput={({ currentTarget }) => {
          setTyped(currentTarget.value);
          setEmpty(false);
        }}
        onBlur={settle}
        onKeyDown={({ key }) => {
          if (key === 'Escape') setTyped(null);
          if (key === 'Enter') settle();
        }}
      />
      <div role="status" id={`${id}-answer`} className="field-answer">
        {empty && <p className="oops">{say('challenge.text-empty', { kept: value })}</p>}
      </div>
    </div>
  );
}
