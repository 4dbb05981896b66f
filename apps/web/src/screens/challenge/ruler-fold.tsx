// What heights are read with, how far a reading may be off, and which height counts.

import type { HeightSource } from '@cairnmark/engine';
import { MEASURING_ERROR_MM_MOST } from '@cairnmark/engine';
import { RULERS } from '@cairnmark/geometry';
import { LengthField } from '../../parts/length-field.tsx';
import { moveHeight, withHeight, withRuler } from '../../store/rule-settings.ts';
import { errorOfDifferenceMm } from './error-of-difference.ts';
import { Fold } from './fold.tsx';
import { useForm } from './form.ts';
import { MoveButtons } from './move-buttons.tsx';
import { SelectField } from './select-field.tsx';
import { Told } from './told.tsx';
import { useMake } from './use-make.ts';

export function RulerFold() {
  const { challenge, inClass, ruler, say } = useForm();
  const { faults, make } = useMake();
  const { measuringErrorMm: errorMm, heightCounts } = challenge;
  const error = inClass.full(errorMm, 'mm');
  const set = say('challenge.ruler-set', {
    ruler: say(`challenge.ruler-${challenge.ruler}`),
    error,
    source: say(`challenge.height-${heightCounts[0] ?? 'ruler'}`),
  });
  return (
    <Fold title={say('challenge.ruler')} set={set}>
      <div className="chal-line">
        <SelectField
          label={say('challenge.ruler-step')}
          value={challenge.ruler}
          options={RULERS.map(({ id }) => ({ id, text: say(`challenge.ruler-${id}`) }))}
          choose={(chosen) => make(withRuler(chosen))}
        />
        <LengthField
          label={say('challenge.error')}
          valueMm={errorMm}
          mostMm={MEASURING_ERROR_MM_MOST}
          ruler={ruler}
          change={(measuringErrorMm) => make((one) => ({ ...one, measuringErrorMm }))}
        />
      </div>
      <p className="chal-note">
        {say('challenge.error-note', {
          error,
          apart: inClass.full(errorOfDifferenceMm({ ...challenge, measuringErrorMm: errorMm }), 'mm'),
          most: inClass.exact(MEASURING_ERROR_MM_MOST, 'mm'),
        })}
      </p>
      <Told faults={faults} />
      <Heights />
    </Fold>
  );
}

function Heights() {
  const { challenge, locked, say } = useForm();
  const { faults, make } = useMake();
  const { heightCounts } = challenge;
  const left = SOURCES.filter((source) => !heightCounts.includes(source));
  return (
    <div className="chal-moved">
      <h3>{say('challenge.heights')}</h3>
      <p className="mut">{say('challenge.heights-note')}</p>
      <ol className="chal-heights">
        {heightCounts.map((source, place) => (
          <li key={source}>
            <span>{say(`challenge.height-${source}`)}</span>
            <MoveButtons
              name={say(`challenge.height-${source}`)}
              place={place}
              last={heightCounts.length - 1}
              move={(step) => make(moveHeight(place, step))}
            />
          </li>
        ))}
      </ol>
      {SOURCES.map((source) => {
        const counts = heightCounts.includes(source);
        if (counts && heightCounts.length === 1) return null;
        return (
          <label key={source} className="chal-check">
            <input
              type="checkbox"
              checked={counts}
              onChange={({ currentTarget }) => make(withHeight(source, currentTarget.checked))}
            />
            <span>{say('challenge.height-counts', { source: say(`challenge.height-${source}`) })}</span>
          </label>
        );
      })}
      {left.length === SOURCES.length - 1 && !locked && <p className="mut">{say('challenge.height-last')}</p>}
      <Told faults={faults} />
    </div>
  );
}

const SOURCES: readonly HeightSource[] = ['ruler', 'photo', 'model'];
