// One of a few sentences.

import { useId } from 'preact/hooks';

export function Radios<T extends string>({
  label,
  options,
  chosen,
  choose,
}: {
  readonly label: string;
  readonly options: readonly { readonly id: T; readonly text: string }[];
  readonly chosen: T;
  readonly choose: (id: T) => void;
}) {
  const id = useId();
  return (
    <fieldset className="chal-radios">
      <legend className="lab">{label}</legend>
      {options.map((option) => (
        <label key={option.id} className="chal-check">
          <input type="radio" name={id} checked={option.id === chosen} onChange={() => choose(option.id)} />
          <span>{option.text}</span>
        </label>
      ))}
    </fieldset>
  );
}
