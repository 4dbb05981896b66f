// Everything of the class leaves this device, once somebody has said so twice. A file of it can be saved first.

import type { ClassRecord } from '@cairnmark/engine';
import { useRef, useState } from 'preact/hooks';
import { useLocation } from 'wouter-preact';
import { usePlanWords } from '../../app/plan-words.ts';
import { SaveClass } from '../../app/save-class.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Icon } from '../../parts/icon.tsx';
import { useSession } from '../../store/use-session.ts';

export function DeleteClass({ record }: { readonly record: ClassRecord }) {
  const { say } = usePlanWords();
  const dialog = useRef<HTMLDialogElement>(null);
  const [, navigate] = useLocation();
  const erase = useSession((session) => session.erase);
  const [failed, setFailed] = useState(false);
  const { groups, attempts, challenges } = record;
  const remove = async (): Promise<void> => {
    setFailed(false);
    if ((await erase()) === 'kept') navigate('/');
    else setFailed(true);
  };
  return (
    <>
      <button type="button" className="btn" onClick={() => dialog.current?.showModal()}>
        <Icon name="take-off" />
        {say('class.delete')}
      </button>
      <Dialog dialog={dialog} title={say('class.delete-title', { name: record.name })}>
        <p>
          {say('class.delete-what', {
            groups: groups.length,
            challenges: challenges.length,
            tries: attempts.length,
          })}
        </p>
        <p role="alert" className="oops">
          {failed ? say('class.delete-failed') : ''}
        </p>
        <div className="class-actions">
          <SaveClass />
          <button type="button" className="btn main" onClick={() => void remove()}>
            {say('class.delete-now')}
          </button>
        </div>
      </Dialog>
    </>
  );
}
