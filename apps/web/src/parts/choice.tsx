// A bar of choices of which one is pressed.

import { useId } from 'preact/hooks';

interface Option<T extends string> {
  readonly id: T;
  readonly text: string;
}

export function Choice<T extends string>({
  label,
  options,
  chosen,
  choose,
  hideLabel = false,
}: {
  readonly label: string;
  readonly options: readonly Option<T>[];
  readonly chosen: T | null;
  readonly choose: (id: T) => void;
  /** Where it is clear to the eye what is chosen. */
  readonly hideLabel?: boolean;
}) {
  const id = useId();
  return (
    <div className="field">
      <span className={hideLabel ? 'vh' : 'lab'} id={id}>
        {label}
      </span>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be laid out as one bar in every browser */}
      <div className="seg" role="group" aria-labelledby={id}>
        {options.map((option) => (
          <button key={option.id} type="button" aria-pressed={option.id === chosen} onClick={() => choose(option.id)}>
            {option.text}
          </button>
        ))}
      </div>
    </div>
  );
}
