// A choice out of a list that is too long for a bar.

import { useId } from 'preact/hooks';

export interface SelectOption<T extends string> {
  readonly id: T;
  readonly text: string;
}

export interface SelectGroup<T extends string> {
  readonly title: string;
  readonly options: readonly SelectOption<T>[];
}

export function SelectField<T extends string>({
  label,
  value,
  choose,
  options = [],
  groups = [],
}: {
  readonly label: string;
  readonly value: T;
  readonly choose: (value: T) => void;
  readonly options?: readonly SelectOption<T>[];
  readonly groups?: readonly SelectGroup<T>[];
}) {
  const id = useId();
  const all = [...options, ...groups.flatMap((group) => group.options)];
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <select
        id={id}
        className="in chal-select"
        value={value}
        onChange={({ currentTarget }) => {
          const chosen = all.find((option) => option.id === currentTarget.value);
          if (chosen !== undefined) choose(chosen.id);
          // What was refused is not what the list says.
          currentTarget.value = value;
        }}
      >
        {options.map((option) => (
          <option key={option.id} value={option.id}>
            {option.text}
          </option>
        ))}
        {groups.map((group) => (
          <optgroup key={group.title} label={group.title}>
            {group.options.map((option) => (
              <option key={option.id} value={option.id}>
                {option.text}
              </option>
            ))}
          </optgroup>
        ))}
      </select>
    </div>
  );
}
