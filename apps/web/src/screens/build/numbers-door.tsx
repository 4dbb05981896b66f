// Just the numbers: what the ruler and the clock said, and which pieces were used. Nothing is drawn.

import { SECONDS_MOST } from '@cairnmark/engine';
import { useState } from 'preact/hooks';
import { useScreenWords } from '../../app/use-words.ts';
import { LengthField } from '../../parts/length-field.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { secondsOf, withoutReading, withoutSeconds, withReading, withSeconds } from '../../store/observed-changes.ts';
import { useSession } from '../../store/use-session.ts';
import type { Door } from './doors.tsx';
import { NumbersList } from './numbers-list.tsx';
import type { Shown } from './shown.ts';

export function NumbersDoor(props: Shown & { readonly setDoor: (door: Door) => void }) {
  const { at, words } = props;
  const screen = useScreenWords();
  const changeTry = useSession((session) => session.changeTry);
  const observed = at.attempt?.observed ?? { heightReadingsMm: [] };
  const fell = at.attempt?.state.kind === 'fell';
  const [heightMm, setHeightMm] = useState<number | null>(null);
  const addReading = (): void => {
    if (heightMm === null) return;
    changeTry(withReading(heightMm));
    setHeightMm(null);
  };
  return (
    <section className="numbers scene" aria-label={screen.say('door.numbers')}>
      <h2>{screen.say('numbers.title')}</h2>
      <form
        className="row-of"
        onSubmit={(event) => {
          event.preventDefault();
          addReading();
        }}
      >
        <LengthField
          key={observed.heightReadingsMm.length}
          label={screen.say('numbers.height')}
          valueMm={heightMm}
          ruler={words.ruler}
          change={setHeightMm}
        />
        <button type="submit" className="btn">
          {screen.say('numbers.add-reading')}
        </button>
      </form>
      {observed.heightReadingsMm.length > 0 && (
        <ul className="readings" aria-label={screen.say('numbers.readings')}>
          {observed.heightReadingsMm.map((readingMm, k) => {
            const reading = words.inClass.amount('height', readingMm, 0);
            return (
              <li key={k}>
                <b>{reading}</b>
                <button type="button" className="btn bare" onClick={() => changeTry(withoutReading(k))}>
                  {screen.say('numbers.remove', { reading })}
                </button>
              </li>
            );
          })}
        </ul>
      )}
      <NumberField
        label={screen.say(fell ? 'score-card.seconds-fell' : 'numbers.seconds')}
        unit="s"
        ruler={words.ruler}
        least={0}
        most={SECONDS_MOST}
        value={at.attempt === null ? null : secondsOf(at.attempt)}
        change={(seconds) => changeTry(withSeconds(seconds))}
        clear={fell ? undefined : () => changeTry(withoutSeconds)}
      />
      <NumbersList {...props} />
    </section>
  );
}
