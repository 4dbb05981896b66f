// A penalty: how many points, and why.

import { POINTS_MOST } from '@cairnmark/engine';
import { useState } from 'preact/hooks';
import { NumberField } from '../../parts/number-field.tsx';
import { withStroke } from '../../store/supply-changes.ts';
import { useGame } from './game.ts';
import { ReasonChoice } from './reason-choice.tsx';

const REASONS = [
  'supply-game.reason-is-early',
  'supply-game.reason-is-two-at-once',
  'supply-game.reason-is-rough',
] as const;

/** Points. Common in such games, no source; any other number can be typed. */
const USUAL_POINTS = 2;
/** Points. A penalty of nothing is none. */
const LEAST_POINTS = 0.1;

export function GivePenalty() {
  const { say, ruler, list, make, tell } = useGame();
  const [points, setPoints] = useState(USUAL_POINTS);
  const [reason, setReason] = useState<string>(() => say(REASONS[0]));
  const give = (): void => {
    if (reason === '') tell({ place: 'penalty', text: say('supply-game.reason-missing') });
    else make('penalty', withStroke(list, { kind: 'penalty', points, reason }), say('supply-game.not-kept'));
  };
  return (
    <div className="supply-panel note">
      <ReasonChoice reasons={REASONS.map((key) => say(key))} change={setReason} />
      <div className="supply-penalty">
        <NumberField
          label={say('supply-game.penalty-points')}
          value={points}
          unit="count"
          unitName={say('supply-game.points-unit')}
          ruler={ruler}
          least={LEAST_POINTS}
          most={POINTS_MOST}
          change={setPoints}
        />
        <button type="button" className="btn" onClick={give}>
          {say('supply-game.penalty-give')}
        </button>
      </div>
    </div>
  );
}
