// The grade sets ruler, pi and what the class sees; any row can be opened or hidden again.

import type { GradePreset } from '@cairnmark/engine';
import { SETS_ID, STOOD_ID, TILT_ID } from '@cairnmark/engine';
import { MEASURES } from '@cairnmark/geometry';
import { Choice } from '../../parts/choice.tsx';
import { Icon } from '../../parts/icon.tsx';
import { isAskedFor, withGrade, withShown } from '../../store/rule-settings.ts';
import { Fold } from './fold.tsx';
import { useForm } from './form.ts';
import { Told } from './told.tsx';
import { useMake } from './use-make.ts';

export function GradeFold() {
  const { challenge, locked, words, say } = useForm();
  const { faults, make } = useMake();
  const hidden = SHOWABLE.filter((measure) => challenge.hidden.includes(measure) && !isAskedFor(measure, challenge));
  const set = say(hidden.length === 0 ? 'challenge.grade-set-all' : 'challenge.grade-set', {
    grade: words.capital(words.names.grades[challenge.gradePreset]),
    number: hidden.length,
  });
  return (
    <Fold title={say('challenge.grade')} set={set}>
      {!locked && (
        <>
          <Choice
            label={say('challenge.grade-choose')}
            options={GRADES.map((id) => ({ id, text: words.capital(words.names.grades[id]) }))}
            chosen={challenge.gradePreset}
            choose={(grade) => make(withGrade(grade))}
          />
          <p className="chal-note">{say('challenge.grade-note')}</p>
        </>
      )}
      <Told faults={faults} />
      <Shown />
    </Fold>
  );
}

function Shown() {
  const { challenge, words, inClass, say } = useForm();
  const { faults, make } = useMake();
  return (
    <fieldset className="chal-kinds">
      <legend className="lab">{say('challenge.shown')}</legend>
      {SHOWABLE.map((measure) => {
        const name = words.capital(inClass.plainLabel(measure));
        if (isAskedFor(measure, challenge)) {
          return (
            <p key={measure} className="chal-check asked">
              <Icon name="yes" />
              <span>
                {name} <small className="mut">{say('challenge.asked-for')}</small>
              </span>
            </p>
          );
        }
        return (
          <label key={measure} className="chal-check">
            <input
              type="checkbox"
              checked={!challenge.hidden.includes(measure)}
              onChange={({ currentTarget }) => make(withShown(measure, currentTarget.checked))}
            />
            <span>{name}</span>
          </label>
        );
      })}
      <Told faults={faults} />
    </fieldset>
  );
}

const GRADES: readonly GradePreset[] = ['grades-2-3', 'grades-4-5', 'grades-6-8'];
const SHOWABLE: readonly string[] = [...MEASURES.map(({ id }) => id), STOOD_ID, TILT_ID, SETS_ID];
