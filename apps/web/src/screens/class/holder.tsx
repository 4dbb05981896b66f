// Who holds the device, and the PIN that brings it back from the pupils.

import { useId, useState } from 'preact/hooks';
import { usePlanWords } from '../../app/plan-words.ts';
import { RoleChoice } from '../../app/role-choice.tsx';
import { useHandFocus } from '../../parts/use-hand-focus.ts';
import { isPin, PIN_FIGURES, pinOf, setPin } from '../../store/pins.ts';
import { useSession } from '../../store/use-session.ts';

export function Holder() {
  const { say } = usePlanWords();
  return (
    <section className="sec">
      <h2>{say('class.holder')}</h2>
      <p className="mut">{say('class.holder-what')}</p>
      <RoleChoice />
      <Pin />
    </section>
  );
}

function Pin() {
  const { say } = usePlanWords();
  const id = useId();
  const classId = useSession(({ place }) => place?.classId ?? '');
  const [pin, keep] = useState(() => pinOf(classId));
  const [typed, setTyped] = useState('');
  const [told, setTold] = useState<'short' | 'not-kept' | null>(null);
  const { area, hand } = useHandFocus<HTMLFormElement>();
  const set = (next: string | null): void => {
    const kept = setPin(classId, next);
    keep(pinOf(classId));
    setTold(kept ? null : 'not-kept');
    setTyped('');
  };
  return (
    <details className="class-pin">
      <summary>{pin === null ? say('class.pin-none') : say('class.pin-set')}</summary>
      <p className="mut">{say('class.pin-what')}</p>
      <form
        ref={area}
        className="add-groups"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          if (isPin(typed)) set(typed);
          else setTold('short');
        }}
      >
        <div className="field">
          <label htmlFor={id}>{say('class.pin')}</label>
          <input
            id={id}
            className="in n"
            value={typed}
            inputMode="numeric"
            autoComplete="off"
            maxLength={PIN_FIGURES}
            aria-describedby={`${id}-answer`}
            onInput={({ currentTarget }) => setTyped(currentTarget.value)}
          />
        </div>
        <button type="submit" className="btn">
          {say('class.pin-save')}
        </button>
        {pin !== null && (
          <button
            type="button"
            className="btn"
            onClick={() => {
              // With the PIN the button goes.
              hand((form) => form.querySelector('input'));
              set(null);
            }}
          >
            {say('class.pin-drop')}
          </button>
        )}
        <p role="status" id={`${id}-answer`} className="oops">
          {told === null ? '' : say(`class.pin-${told}`)}
        </p>
      </form>
    </details>
  );
}
