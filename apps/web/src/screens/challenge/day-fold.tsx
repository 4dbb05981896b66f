// The rule of the whole day, for the class and not for one challenge: what is added up, and how much each challenge counts.

import { POINTS_MOST } from '@cairnmark/engine';
import type { DayRule } from '@cairnmark/scoring';
import { NumberField } from '../../parts/number-field.tsx';
import { changeDay, withWeight } from '../../store/day-changes.ts';
import { Fold } from './fold.tsx';
import { useForm } from './form.ts';
import { PlacePoints } from './place-points.tsx';
import { Radios } from './radios.tsx';
import { Told } from './told.tsx';
import { useMake } from './use-make.ts';

export function DayFold() {
  const { at, words, ruler, say } = useForm();
  const { faults, makeInClass } = useMake();
  const { day, challenges } = at.record;
  const nameOf = (id: string): string => challenges.find((one) => one.id === id)?.name ?? id;
  return (
    <Fold title={say('challenge.day')} set={words.day(day, nameOf).join(' ')}>
      <div className="chal-two">
        <Radios
          label={say('challenge.day-kind')}
          options={KINDS.map((id) => ({ id, text: say(`challenge.day-${id}`) }))}
          chosen={day.kind}
          choose={(kind) => makeInClass(changeDay((one) => ({ ...one, kind })))}
        />
        <Radios
          label={say('challenge.day-missing')}
          options={[
            { id: 'out', text: say('challenge.day-missing-out') },
            { id: 'mean', text: say('challenge.day-missing-mean') },
          ]}
          chosen={day.meanOfThosePresent ? 'mean' : 'out'}
          choose={(id) => makeInClass(changeDay((one) => ({ ...one, meanOfThosePresent: id === 'mean' })))}
        />
      </div>
      {day.kind === 'sum-of-place-points' && <PlacePoints day={day} makeInClass={makeInClass} />}
      <h3>{say('challenge.weights')}</h3>
      <p className="mut">{say('challenge.weights-note')}</p>
      <div className="chal-line">
        {challenges.map(({ id, name }) => (
          <NumberField
            key={id}
            label={name}
            value={day.weights[id] ?? 1}
            unit="count"
            unitName={say('challenge.times')}
            ruler={ruler}
            least={0}
            most={POINTS_MOST}
            change={(weight) => makeInClass(withWeight(id, weight))}
          />
        ))}
      </div>
      <Told faults={faults} />
    </Fold>
  );
}

const KINDS: readonly DayRule['kind'][] = ['sum-of-points', 'sum-of-place-points', 'mean-place'];
