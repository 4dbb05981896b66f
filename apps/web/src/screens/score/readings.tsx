// Readings of the height with a ruler: added one by one, listed as taken, taken away again.

import { LENGTH_MM_MOST } from '@cairnmark/engine';
import { useRef, useState } from 'preact/hooks';
import { Icon } from '../../parts/icon.tsx';
import { LengthField } from '../../parts/length-field.tsx';
import { readingDoubt } from '../../parts/reading-doubt.ts';
import { withoutReading, withReading } from '../../store/observed-changes.ts';
import { useSession } from '../../store/use-session.ts';
import { useCard } from './card.ts';

export function Readings() {
  const { at, report, inClass, ruler, say } = useCard();
  const changeTry = useSession((session) => session.changeTry);
  const [valueMm, setValueMm] = useState<number | null>(null);
  const field = useRef<HTMLFormElement>(null);
  const { heightReadingsMm } = at.attempt.observed;
  const height = report.facts.find(({ id }) => id === 'height');
  const seen = height?.observed ?? null;
  const add = (): void => {
    if (valueMm !== null) changeTry(withReading(valueMm));
    setValueMm(null);
    field.current?.querySelector('input')?.focus();
  };
  return (
    <div className="card-part">
      <h3>{say('score-card.readings')}</h3>
      {heightReadingsMm.length === 0 && <p className="mut">{say('score-card.no-readings')}</p>}
      <ol className="card-readings">
        {heightReadingsMm.map((readingMm, k) => (
          <li key={k}>
            <b>{inClass.full(readingMm, 'mm')}</b>
            <button
              type="button"
              className="btn bare"
              aria-label={say('score-card.remove-reading', { number: k + 1, reading: inClass.full(readingMm, 'mm') })}
              onClick={() => {
                changeTry(withoutReading(k));
                field.current?.querySelector('input')?.focus();
              }}
            >
              <Icon name="take-off" />
            </button>
          </li>
        ))}
      </ol>
      {seen !== null && heightReadingsMm.length > 1 && (
        <p>
          {say('score-card.mean', {
            height: `${inClass.amount('height', seen.value, seen.tolerance)} ${inClass.error('height', seen.tolerance)}`,
          })}
        </p>
      )}
      <Doubt />
      <form
        ref={field}
        className="card-form-row"
        onSubmit={(event) => {
          event.preventDefault();
          add();
        }}
      >
        <LengthField
          label={say('score-card.reading')}
          valueMm={valueMm}
          mostMm={LENGTH_MM_MOST}
          ruler={ruler}
          change={setValueMm}
          clear={() => setValueMm(null)}
        />
        <button type="submit" className="btn">
          <Icon name="plus" />
          {say('score-card.add-reading')}
        </button>
      </form>
    </div>
  );
}

/** Asks to look again when a reading looks like a slip; read out, so that nobody has to see it. */
function Doubt() {
  const { at, report, inClass, say } = useCard();
  const workedOut = report.facts.find(({ id }) => id === 'height')?.predicted;
  const workedOutMm = workedOut?.status === 'measured' ? workedOut.value : null;
  const doubt = readingDoubt(at.attempt.observed.heightReadingsMm, workedOutMm);
  return (
    <p className={doubt === null ? 'vh' : 'card-provisional'} role="status">
      {doubt?.about === 'apart' && say('score-card.readings-apart', { gap: inClass.full(doubt.gapMm, 'mm') })}
      {doubt?.about === 'far' &&
        say('score-card.reading-far', {
          height: inClass.full(workedOutMm ?? 0, 'mm'),
          reading: inClass.full(doubt.readingMm, 'mm'),
        })}
    </p>
  );
}
