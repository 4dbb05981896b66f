// Takes the challenge out of the class. One that groups have built under goes only after two questions, which say what goes
// with it. The last one stays: a class needs one.

import { useRef, useState } from 'preact/hooks';
import { Dialog } from '../../parts/dialog.tsx';
import { Icon } from '../../parts/icon.tsx';
import { removeChallenge } from '../../store/challenge-removal.ts';
import { useSession } from '../../store/use-session.ts';
import { useForm } from './form.ts';
import type { Gone } from './lifted.ts';
import { Told } from './told.tsx';
import { useMake } from './use-make.ts';

export function RemoveFold({ removed }: { readonly removed: (gone: Gone) => void }) {
  const { at, challenge, say } = useForm();
  const { faults, makeInClass } = useMake();
  const goTo = useSession((session) => session.goTo);
  const dialog = useRef<HTMLDialogElement>(null);
  const [sure, setSure] = useState(false);
  const { record } = at;
  const tries = record.attempts.filter((one) => one.challenge === challenge.id).length;
  const strokes = record.supplies[challenge.id]?.length ?? 0;
  const here = record.challenges.indexOf(challenge);
  const next = record.challenges[here + 1] ?? record.challenges[here - 1];
  if (next === undefined) return <p className="mut chal-last">{say('challenge.only-one')}</p>;
  const remove = (): void => {
    dialog.current?.close();
    goTo({ challenge: next.id });
    if (makeInClass(removeChallenge(challenge.id))) removed({ id: challenge.id, name: challenge.name, before: record });
    else goTo({ challenge: challenge.id });
  };
  return (
    <div className="chal-remove">
      <button
        type="button"
        className="btn"
        onClick={() => {
          setSure(false);
          if (tries + strokes === 0) remove();
          else dialog.current?.showModal();
        }}
      >
        <Icon name="take-off" />
        {say('challenge.remove')}
      </button>
      <Told faults={faults} />
      <Dialog dialog={dialog} title={say('challenge.remove-which', { name: challenge.name })}>
        <div className="places">
          {tries > 0 && <p>{say('challenge.goes-tries', { number: tries })}</p>}
          {strokes > 0 && <p>{say('challenge.goes-strokes', { number: strokes })}</p>}
          <p role="status">{sure ? say('challenge.goes-sure') : ''}</p>
          <button type="button" className="btn" onClick={() => (sure ? remove() : setSure(true))}>
            <Icon name="take-off" />
            {say(sure ? 'challenge.remove-sure' : 'challenge.remove-all')}
          </button>
        </div>
      </Dialog>
    </div>
  );
}
