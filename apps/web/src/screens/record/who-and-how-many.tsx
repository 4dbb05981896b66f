// Who measures or judges, who is measured and who not yet, and that the whole sheet was seen.

import { NAME_CHARACTERS_MOST } from '@cairnmark/formats';
import { useId, useState } from 'preact/hooks';
import { usePlanWords } from '../../app/plan-words.ts';
import { useEdit } from '../../store/edit-class.ts';
import { measuredIn } from '../../store/measured-in.ts';
import { plainText } from '../../store/plain-text.ts';
import { confirmAll } from '../../store/sheet-changes.ts';
import type { SheetView } from './record-sheet.tsx';
import type { SheetData } from './sheet.ts';

export function WhoAndHowMany({ sheet, view }: { readonly sheet: SheetData; readonly view: SheetView }) {
  const { record, challenge, words, person } = sheet;
  const { say } = usePlanWords();
  const edit = useEdit();
  const id = useId();
  const [missing, setMissing] = useState(false);
  const { measured, notYet } = measuredIn(record, challenge.id);
  const who = plainText(person.typed);
  const waiting = record.attempts.some(
    (attempt) => attempt.challenge === challenge.id && notYet.some(({ id: group }) => group === attempt.group),
  );
  const confirm = (): void => {
    setMissing(who === '');
    if (who !== '') edit(confirmAll(challenge.id, who));
  };
  return (
    <div className="record-who">
      <div className="field">
        <label htmlFor={id}>{say(view === 'marks' ? 'record-sheet.judge' : 'record-sheet.who')}</label>
        <input
          id={id}
          className="in"
          value={person.typed}
          maxLength={NAME_CHARACTERS_MOST}
          autoComplete="off"
          onInput={({ currentTarget }) => person.type(currentTarget.value)}
        />
      </div>
      {view === 'numbers' && (
        <>
          <button type="button" className="btn" aria-disabled={!waiting} onClick={confirm}>
            {say('record-sheet.seen-all')}
          </button>
          <p role="status" className="record-count">
            <b>{say('class.measured-of', { measured: measured.length, of: record.groups.length })}</b>{' '}
            {notYet.length > 0 && (
              <span className="mut">
                {say('class.not-yet', { groups: words.words.listed(notYet.map(({ name }) => name)) })}
              </span>
            )}
          </p>
        </>
      )}
      <p role="status" className="oops">
        {missing && who === '' ? say('record-sheet.who-missing') : ''}
      </p>
    </div>
  );
}
