// A field for one line of text that its owner holds while it is typed.

import { useId } from 'preact/hooks';

export function LineField({
  label,
  value,
  most,
  change,
  leave,
  className = '',
  placeholder,
}: {
  readonly label: string;
  readonly value: string;
  /** Characters. */
  readonly most: number;
  readonly change: (typed: string) => void;
  /** The field is left. */
  readonly leave?: () => void;
  readonly className?: string;
  readonly placeholder?: string;
}) {
  const id = useId();
  return (
    <div className={`field ${className}`}>
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        className="in"
        value={value}
        maxLength={most}
        placeholder={placeholder}
        autoComplete="off"
        onInput={({ currentTarget }) => change(currentTarget.value)}
        onBlur={leave}
      />
    </div>
  );
}
