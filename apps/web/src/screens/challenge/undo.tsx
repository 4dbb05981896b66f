// Says that a challenge was taken out, and puts it back.

import { useLayoutEffect } from 'preact/hooks';
import { Icon } from '../../parts/icon.tsx';
import { useHandFocus } from '../../parts/use-hand-focus.ts';
import { putBack } from '../../store/challenge-removal.ts';
import { useSession, useSessionStore } from '../../store/use-session.ts';
import { useForm } from './form.ts';
import type { Gone } from './lifted.ts';
import { Told } from './told.tsx';
import { useMake } from './use-make.ts';

export function Undo({ gone, done }: { readonly gone: Gone | null; readonly done: () => void }) {
  const { at, say } = useForm();
  const store = useSessionStore();
  const { faults, makeInClass } = useMake();
  const goTo = useSession((session) => session.goTo);
  const { area, hand } = useHandFocus<HTMLDivElement>();
  // The button that took it out is gone.
  useLayoutEffect(() => {
    if (gone !== null) area.current?.querySelector('button')?.focus();
  }, [gone, area]);
  const undo = (): void => {
    if (gone === null || !makeInClass(putBack(gone.before, gone.id))) return;
    const others = new Set(at.record.challenges.map(({ id }) => id));
    const back = store.getState().record?.challenges.find(({ id }) => !others.has(id));
    if (back !== undefined) goTo({ challenge: back.id });
    done();
    hand(() => document.querySelector<HTMLElement>('.chal-top [aria-pressed="true"]'));
  };
  return (
    <div role="status" ref={area} className="chal-undo">
      {gone !== null && (
        <p className="note">
          <span>{say('challenge.gone', { name: gone.name })}</span>
          <button type="button" className="btn" onClick={undo}>
            <Icon name="undo" />
            {say('challenge.put-back')}
          </button>
        </p>
      )}
      <Told faults={faults} />
    </div>
  );
}
