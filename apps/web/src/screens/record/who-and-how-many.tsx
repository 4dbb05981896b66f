// Who measures or judges, who is measured and who not yet, and that the whole sheet was seen.

import { useState } from 'preact/hooks';
import { usePlanWords } from '../../app/plan-words.ts';
import { PersonField } from '../../parts/person-field.tsx';
import { useEdit } from '../../store/edit-class.ts';
import { measuredIn } from '../../store/measured-in.ts';
import { asName } from '../../store/plain-text.ts';
import { confirmAll, lastTry, waits } from '../../store/sheet-changes.ts';
import type { SheetView } from './record-sheet.tsx';
import type { SheetData } from './sheet.ts';

export function WhoAndHowMany({ sheet, view }: { readonly sheet: SheetData; readonly view: SheetView }) {
  const { record, challenge, words, person } = sheet;
  const { say } = usePlanWords();
  const edit = useEdit();
  const [missing, setMissing] = useState(false);
  const { measured, notYet } = measuredIn(record, challenge.id);
  const who = asName(person.typed);
  const waiting = notYet.some(({ id }) => {
    const last = lastTry(record, id, challenge.id);
    return last !== null && waits(last);
  });
  const confirm = (): void => {
    setMissing(who === '');
    if (who !== '') edit(confirmAll(challenge.id, who));
  };
  return (
    <div className="record-who">
      <PersonField label={say(view === 'marks' ? 'record-sheet.judge' : 'record-sheet.who')} person={person} />
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
