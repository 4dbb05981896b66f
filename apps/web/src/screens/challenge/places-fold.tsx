// Who wins: what is compared first, what then among equals, which try of a group counts, and what a fallen build counts.

import type { Challenge } from '@cairnmark/engine';
import { Icon } from '../../parts/icon.tsx';
import { useHandFocus } from '../../parts/use-hand-focus.ts';
import { addKey, keysOf } from '../../store/rule-settings.ts';
import { usualStep } from '../../store/usual-step.ts';
import { Fold } from './fold.tsx';
import { useForm } from './form.ts';
import { inLastRow, onAdd } from './in-rows.ts';
import { KeyRow } from './key-row.tsx';
import { PointsField } from './points-field.tsx';
import { Radios } from './radios.tsx';
import { Told } from './told.tsx';
import { useMake } from './use-make.ts';

export function PlacesFold() {
  const { challenge, locked, words, inClass, say } = useForm();
  const { faults, make } = useMake();
  const { area, hand } = useHandFocus<HTMLDivElement>();
  const keys = keysOf(challenge);
  const add = (): void => {
    const by = ['height', 'pieces', 'volume'].find((one) => keys.every((key) => key.by !== one)) ?? 'points';
    const key = { by, better: 'more', roundTo: usualStep(by, challenge, inClass.unit(by).size) } as const;
    if (make(addKey(key))) hand(inLastRow);
  };
  return (
    <Fold title={say('challenge.places')} set={words.capital(inClass.order(challenge.ranking))}>
      <div ref={area}>
        {keys.map((key, place) => (
          <KeyRow key={place} value={key} place={place} last={keys.length - 1} removed={() => hand(onAdd)} />
        ))}
        {!locked && (
          <div className="chal-add">
            <button type="button" className="btn bare" onClick={add}>
              <Icon name="plus" />
              {say('challenge.add-key')}
            </button>
          </div>
        )}
        <p className="chal-note">{say('challenge.places-note')}</p>
      </div>
      <div className="chal-two">
        <Radios
          label={say('challenge.attempt-counts')}
          options={ATTEMPTS.map((id) => ({ id, text: say(`challenge.attempt-${id}`) }))}
          chosen={challenge.attemptCounts}
          choose={(attemptCounts) => make((one) => ({ ...one, attemptCounts }))}
        />
        <Fallen make={make} />
      </div>
      <Told faults={faults} />
    </Fold>
  );
}

function Fallen({ make }: Pick<ReturnType<typeof useMake>, 'make'>) {
  const { challenge, inClass, say } = useForm();
  const { fallen } = challenge;
  const points = fallen.counts === 'points' ? fallen.points : 0;
  return (
    <div>
      <Radios
        label={say('challenge.fallen')}
        options={FALLEN.map((id) => ({ id, text: inClass.falling(fallenOf(id, points)) }))}
        chosen={fallen.counts}
        choose={(counts) => make((one) => ({ ...one, fallen: fallenOf(counts, points) }))}
      />
      {fallen.counts === 'points' && (
        <PointsField
          label={say('challenge.fallen-count')}
          unitName={say('challenge.points-unit')}
          value={points}
          change={(typed) => make((one) => ({ ...one, fallen: fallenOf('points', typed) }))}
        />
      )}
    </div>
  );
}

const fallenOf = (counts: Challenge['fallen']['counts'], points: number): Challenge['fallen'] =>
  counts === 'points' ? { counts, points } : { counts };

const ATTEMPTS: readonly Challenge['attemptCounts'][] = ['best', 'last', 'chosen'];
const FALLEN: readonly Challenge['fallen']['counts'][] = ['out', 'points', 'as-measured'];
