// Why: one of a few reasons by a tap, or typed. What is kept is the text itself, so that it stays as it was said.

import { TEXT_CHARACTERS_MOST } from '@cairnmark/formats';
import { useState } from 'preact/hooks';
import { Choice } from '../../parts/choice.tsx';
import { LineField } from '../../parts/line-field.tsx';
import { asReason } from '../../store/plain-text.ts';
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
        <LineField
          label={say('supply-game.reason-typed')}
          value={typed}
          most={TEXT_CHARACTERS_MOST}
          change={(text) => {
            setTyped(text);
            change(asReason(text));
          }}
        />
      )}
    </div>
  );
}
