// Why something was decided: told to everybody who reads the card.

import { TEXT_CHARACTERS_MOST } from '@cairnmark/formats';
import { useId } from 'preact/hooks';
import { useCard } from './card.ts';

export function ReasonField({ value, change }: { readonly value: string; readonly change: (typed: string) => void }) {
  const { say } = useCard();
  const id = useId();
  return (
    <div className="field card-reason">
      <label htmlFor={id}>{say('score-card.reason')}</label>
      <input
        id={id}
        className="in"
        value={value}
        maxLength={TEXT_CHARACTERS_MOST}
        autoComplete="off"
        onInput={({ currentTarget }) => change(currentTarget.value)}
      />
    </div>
  );
}
