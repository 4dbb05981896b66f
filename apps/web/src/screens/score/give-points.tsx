// Points given or taken by hand. A slip is mended by points the other way, with its reason: nothing vanishes.

import type { Adjustment } from '@cairnmark/engine';
import { POINTS_MOST } from '@cairnmark/engine';
import { useState } from 'preact/hooks';
import { NumberField } from '../../parts/number-field.tsx';
import { PersonField } from '../../parts/person-field.tsx';
import { withAdjustment } from '../../store/class-changes.ts';
import { nowWithZone } from '../../store/clock.ts';
import { asName, asReason } from '../../store/plain-text.ts';
import { useSession } from '../../store/use-session.ts';
import { useCard } from './card.ts';
import { ReasonField } from './reason-field.tsx';

export function GivePoints() {
  const { ruler, say, person } = useCard();
  const changeTry = useSession((session) => session.changeTry);
  const [points, setPoints] = useState<number | null>(null);
  const [reason, setReason] = useState('');
  const [missing, setMissing] = useState(false);
  const give = (): void => {
    const adjustment = complete(points, person.typed, reason);
    setMissing(adjustment === null);
    if (adjustment === null) return;
    changeTry(withAdjustment({ ...adjustment, at: nowWithZone() }));
    setPoints(null);
    setReason('');
  };
  return (
    <details className="card-give">
      <summary>{say('score-card.give')}</summary>
      <div className="card-form-row">
        <NumberField
          label={say('score-card.give-points')}
          value={points}
          unit="count"
          ruler={ruler}
          least={-POINTS_MOST}
          most={POINTS_MOST}
          change={setPoints}
          clear={() => setPoints(null)}
        />
        <PersonField label={say('score-card.who')} person={person} />
        <ReasonField value={reason} change={setReason} />
        <button type="button" className="btn" onClick={give}>
          {say('score-card.give-now')}
        </button>
      </div>
      <p role="status" className="oops">
        {missing ? say('score-card.give-missing') : ''}
      </p>
    </details>
  );
}

/** null: something is not filled in. */
function complete(points: number | null, typedBy: string, typedReason: string): Omit<Adjustment, 'at'> | null {
  const [by, reason] = [asName(typedBy), asReason(typedReason)];
  return points === null || points === 0 || by === '' || reason === '' ? null : { points, by, reason };
}
