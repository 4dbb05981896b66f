// Who measures, judges or decides. A role will do; no pupil is named.

import { NAME_CHARACTERS_MOST } from '@cairnmark/formats';
import { useId } from 'preact/hooks';
import { useCard } from './card.ts';

export function PersonField({ label }: { readonly label: string }) {
  const { person } = useCard();
  const id = useId();
  return (
    <div className="field card-person">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        className="in"
        value={person.typed}
        maxLength={NAME_CHARACTERS_MOST}
        autoComplete="off"
        onInput={({ currentTarget }) => person.type(currentTarget.value)}
      />
    </div>
  );
}
