// Why: one of a few reasons by a tap, or typed. What is kept is the text itself, so that it stays as it was said.

import { TEXT_CHARACTERS_MOST } from '@cairnmark/formats';
import { useId, useState } from 'preact/hooks';
import { Choice } from '../../parts/choice.tsx';
import { asReason } from '../score/typed-text.ts';
import { useGame } from './game.ts';

/** Stands for what is typed: no reason is an empty text. */
const OTHER = '';

/** The first of `reasons` is chosen at the start. */
export function ReasonChoice({
  reasons,
  change,
}: {
  readonly reasons: readonly string[];
  /** '' while nothing is typed. */
  readonly change: (reason: string) => void;
}) {
  const { say } = useGame();
  const id = useId();
  const [chosen, setChosen] = useState(reasons[0] ?? OTHER);
  const [typed, setTyped] = useState('');
  return (
    <div className="supply-reason">
      <Choice
        label={say('supply-game.reason')}
        options={[...reasons, OTHER].map((reason) => ({
          id: reason,
          text: reason === OTHER ? say('supply-game.reason-other') : reason,
        }))}
        chosen={chosen}
        choose={(reason) => {
          setChosen(reason);
          change(reason === OTHER ? asReason(typed) : reason);
        }}
      />
      {chosen === OTHER && (
        <div className="field">
          <label htmlFor={id}>{say('supply-game.reason-typed')}</label>
          <input
            id={id}
            className="in"
            value={typed}
            maxLength={TEXT_CHARACTERS_MOST}
            autoComplete="off"
            onInput={({ currentTarget }) => {
              setTyped(currentTarget.value);
              change(asReason(currentTarget.value));
            }}
          />
        </div>
      )}
    </div>
  );
}
