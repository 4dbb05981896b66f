// Marks from 0 to 4: one judge after the other, criterion by criterion, with the average of all judges.

import { MARK_MOST } from '@cairnmark/engine';
import { useRef, useState } from 'preact/hooks';
import { CardHelp } from '../../app/card-help.tsx';
import { useMay } from '../../app/use-may.ts';
import { Choice } from '../../parts/choice.tsx';
import { Icon } from '../../parts/icon.tsx';
import { PersonField } from '../../parts/person-field.tsx';
import { withMark } from '../../store/class-changes.ts';
import { withoutMark } from '../../store/observed-changes.ts';
import { asName } from '../../store/plain-text.ts';
import { useSession } from '../../store/use-session.ts';
import { useCard } from './card.ts';
import type { Marked } from './marks.ts';
import { markedCriteria, markOf } from './marks.ts';

const MARKS = Array.from({ length: MARK_MOST + 1 }, (_, mark) => ({ id: String(mark), text: String(mark) }));

export function Marks() {
  const { at, say, person } = useCard();
  const [missing, setMissing] = useState(false);
  const mayJudge = useMay('judge');
  const judge = asName(person.typed);
  return (
    <section className="sec card-marks">
      <h2>{say('score-card.marks')}</h2>
      {mayJudge && (
        <>
          <p className="mut">{say('score-card.marks-what')}</p>
          <CardHelp items={[['help.marks', say('score-card.marks')]]} />
          <PersonField label={`${say('score-card.judge')}. ${say('score-card.judge-hint')}`} person={person} />
          <p role="status" className="oops">
            {missing && judge === '' ? say('score-card.judge-missing') : ''}
          </p>
        </>
      )}
      <ul className="card-ruled">
        {markedCriteria(at.challenge.criteria, at.attempt.judged).map((marked) => (
          <OneCriterion key={marked.criterion.id} marked={marked} judge={judge} nobody={() => setMissing(true)} />
        ))}
      </ul>
    </section>
  );
}

function OneCriterion({
  marked: { criterion, marks, mean },
  judge,
  nobody,
}: {
  readonly marked: Marked;
  readonly judge: string;
  readonly nobody: () => void;
}) {
  const { at, inClass, words, say } = useCard();
  const mayJudge = useMay('judge');
  const changeTry = useSession((session) => session.changeTry);
  const row = useRef<HTMLLIElement>(null);
  const chosen = markOf(at.attempt.judged, judge, criterion.id);
  return (
    <li className="card-criterion" ref={row}>
      {mayJudge ? (
        <Choice
          label={criterion.name}
          options={MARKS}
          chosen={chosen === null ? null : String(chosen)}
          choose={(mark) =>
            judge === '' ? nobody() : changeTry(withMark({ judge, criterion: criterion.id, mark: Number(mark) }))
          }
        />
      ) : (
        <h3>{criterion.name}</h3>
      )}
      <div>
        <p aria-live="polite">
          {mean === null
            ? say('score-card.no-marks')
            : say('score-card.mean-mark', { mark: inClass.amount(`judged:${criterion.id}`, mean, 0) })}
        </p>
        <ul className="card-given">
          {marks.map((mark) => {
            const told = { judge: mark.judge, mark: words.number(mark.mark) };
            return (
              <li key={mark.judge}>
                {say('score-card.mark', told)}
                {mayJudge && (
                  <button
                    type="button"
                    className="btn bare"
                    aria-label={say('score-card.remove-mark', { ...told, criterion: criterion.name })}
                    onClick={() => {
                      changeTry(withoutMark(mark.judge, criterion.id));
                      row.current?.querySelector('button')?.focus();
                    }}
                  >
                    <Icon name="take-off" />
                  </button>
                )}
              </li>
            );
          })}
        </ul>
      </div>
    </li>
  );
}
