// What earns points: a row for every measure that counts.

import type { Challenge } from '@cairnmark/engine';
import { Icon } from '../../parts/icon.tsx';
import { useHandFocus } from '../../parts/use-hand-focus.ts';
import { addRow } from '../../store/challenge-changes.ts';
import { useForm } from './form.ts';
import { inLastRow, onAdd } from './in-rows.ts';
import { PointsRowFields } from './points-row.tsx';
import { Told } from './told.tsx';
import { useMake } from './use-make.ts';

export function Points() {
  const { challenge, locked, inClass, say } = useForm();
  const { faults, make } = useMake();
  const { area, hand } = useHandFocus<HTMLElement>();
  const add = (): void => {
    const measure = FIRST.find((one) => challenge.points.every((row) => row.measure !== one)) ?? 'pieces';
    if (make(addRow({ measure, points: 1, per: inClass.unit(measure).size, rounding: 'none' }))) hand(inLastRow);
  };
  return (
    <section className="chal-sec" ref={area}>
      <h2>{say('challenge.points')}</h2>
      {challenge.points.length === 0 ? (
        <p className="mut">{say('challenge.no-points')}</p>
      ) : (
        <div className="chal-heads points" aria-hidden="true">
          <span>{say('challenge.measure')}</span>
          <span>{say('challenge.row-points')}</span>
          <span>{say('challenge.per')}</span>
          <span>{say('challenge.rounding')}</span>
          <span>{say('challenge.cap')}</span>
          <span>{say('challenge.floor')}</span>
        </div>
      )}
      {challenge.points.map((row) => (
        <PointsRowFields key={row.id} row={row} removed={() => hand(onAdd)} />
      ))}
      {challenge.points.length > 0 && !decides(challenge) && (
        <p className="note">{say('challenge.points-no-places')}</p>
      )}
      {!locked && (
        <div className="chal-add">
          <button type="button" className="btn bare" onClick={add}>
            <Icon name="plus" />
            {say('challenge.add-points')}
          </button>
        </div>
      )}
      <Told faults={faults} />
    </section>
  );
}

/** Do points say anything about the places, first or among equals? */
const decides = ({ ranking: { first, tieBreaks } }: Challenge): boolean =>
  [first, ...tieBreaks].some(({ by }) => by === 'points');

/** What a further row is about, until somebody chooses: the first of these that no row has. */
const FIRST = ['height', 'kinds', 'full-sets', 'volume', 'footprint-area', 'faces'] as const;
