// A person confirms that the real build is as the card tells. Until then, and again after a change, it is provisional.

import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { useMay } from '../../app/use-may.ts';
import { Icon } from '../../parts/icon.tsx';
import { PersonField } from '../../parts/person-field.tsx';
import { withSeenBy } from '../../store/observed-changes.ts';
import { asName } from '../../store/plain-text.ts';
import { useSession } from '../../store/use-session.ts';
import { useCard } from './card.ts';

export function SeenBy() {
  const { at, say, person } = useCard();
  const changeTry = useSession((session) => session.changeTry);
  const [missing, setMissing] = useState(false);
  const mayConfirm = useMay('confirm');
  const { confirmedBy } = at.attempt;
  const box = useRef<HTMLDivElement>(null);
  const pressed = useRef(false);
  useLayoutEffect(() => {
    // The pressed button is gone: the focus goes to the one in its place.
    if (pressed.current) box.current?.querySelector('button')?.focus();
    pressed.current = false;
  }, [confirmedBy]);
  const see = (who: string | null): void => {
    pressed.current = true;
    changeTry(withSeenBy(who));
  };
  const confirm = (): void => {
    const who = asName(person.typed);
    setMissing(who === '');
    if (who !== '') see(who);
  };
  if (confirmedBy !== null) {
    return (
      <div className="card-form-row" ref={box}>
        <span className="card-seen-told">
          <Icon name="yes" /> {say('score-card.seen-by', { who: confirmedBy })}
        </span>
        {mayConfirm && (
          <button type="button" className="btn" onClick={() => see(null)}>
            {say('score-card.seen-undo')}
          </button>
        )}
      </div>
    );
  }
  // Pupils show it, and somebody else looks.
  if (!mayConfirm) return <p className="mut">{say('score-card.provisional')}</p>;
  return (
    <div ref={box}>
      <p className="mut">{say('score-card.seen-what')}</p>
      <div className="card-form-row">
        <PersonField label={say('score-card.who')} person={person} />
        <button type="button" className="btn main" onClick={confirm}>
          {say('score-card.seen')}
        </button>
      </div>
      <p role="status" className="oops">
        {missing ? say('score-card.seen-missing') : ''}
      </p>
    </div>
  );
}
