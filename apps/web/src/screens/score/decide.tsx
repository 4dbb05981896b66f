// A person sets a value, with a reason. What was measured before stays on the card.

import type { ReportedFact } from '@cairnmark/engine';
import { VALUE_MOST } from '@cairnmark/engine';
import { useState } from 'preact/hooks';
import { NumberField } from '../../parts/number-field.tsx';
import { PersonField } from '../../parts/person-field.tsx';
import { withDecision } from '../../store/class-changes.ts';
import { nowWithZone } from '../../store/clock.ts';
import { asName, asReason } from '../../store/plain-text.ts';
import { useSession } from '../../store/use-session.ts';
import { useCard } from './card.ts';
import { ReasonField } from './reason-field.tsx';

export function Decide({ fact }: { readonly fact: ReportedFact }) {
  const { inClass, ruler, say, person } = useCard();
  const changeTry = useSession((session) => session.changeTry);
  const [value, setValue] = useState<number | null>(null);
  const [reason, setReason] = useState('');
  const [missing, setMissing] = useState(false);
  const decide = (): void => {
    const [by, why] = [asName(person.typed), asReason(reason)];
    setMissing(value === null || by === '' || why === '');
    if (value === null || by === '' || why === '') return;
    changeTry(withDecision({ measure: fact.id, value, by, reason: why, at: nowWithZone() }));
    setValue(null);
    setReason('');
  };
  return (
    <details className="card-decide">
      <summary>{say('score-card.decide')}</summary>
      <div className="card-form-row">
        <NumberField
          label={say('score-card.decide-value')}
          value={value}
          unit={fact.unit}
          unitName={inClass.unit(fact.id).name}
          ruler={ruler}
          least={0}
          most={VALUE_MOST}
          change={setValue}
          clear={() => setValue(null)}
        />
        <PersonField label={say('score-card.who')} person={person} />
        <ReasonField value={reason} change={setReason} />
        <button type="button" className="btn" onClick={decide}>
          {say('score-card.decide-now')}
        </button>
      </div>
      <p role="status" className="oops">
        {missing ? say('score-card.decide-missing') : ''}
      </p>
    </details>
  );
}
