// Points for place 1, 2, 3 and so on, where the day adds up points for places.

import type { DayRule } from '@cairnmark/scoring';
import { Icon } from '../../parts/icon.tsx';
import { addPlace, removeLastPlace, withPlacePoints } from '../../store/day-changes.ts';
import { useForm } from './form.ts';
import { PointsField } from './points-field.tsx';
import type { Making } from './use-make.ts';

export function PlacePoints({ day, makeInClass }: { readonly day: DayRule } & Pick<Making, 'makeInClass'>) {
  const { say } = useForm();
  return (
    <>
      <h3>{say('challenge.place-points')}</h3>
      <p className="mut">{say('challenge.place-points-note')}</p>
      <div className="chal-line">
        {day.placePoints.map((points, k) => (
          <PointsField
            key={k}
            label={say('challenge.place', { place: k + 1 })}
            unitName={say('challenge.points-unit')}
            value={points}
            change={(typed) => makeInClass(withPlacePoints(k, typed))}
          />
        ))}
        <div className="chal-add">
          <button type="button" className="btn bare" onClick={() => makeInClass(addPlace)}>
            <Icon name="plus" />
            {say('challenge.add-place')}
          </button>
          {day.placePoints.length > 1 && (
            <button
              type="button"
              className="btn bare"
              onClick={({ currentTarget }) => {
                // With one place left this button goes.
                const add = currentTarget.previousElementSibling;
                if (makeInClass(removeLastPlace) && day.placePoints.length === 2 && add instanceof HTMLElement)
                  add.focus();
              }}
            >
              <Icon name="minus" />
              {say('challenge.remove-place')}
            </button>
          )}
        </div>
      </div>
    </>
  );
}
