// Who holds the device now. From pupils to another role a PIN is asked for, where the teacher has set one.

import { useId, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { Choice } from '../parts/choice.tsx';
import { useHandFocus } from '../parts/use-hand-focus.ts';
import type { Role } from '../store/device.ts';
import { ROLES } from '../store/device.ts';
import { PIN_FIGURES, pinOf } from '../store/pins.ts';
import { useSession } from '../store/use-session.ts';
import { asksPin } from './roles.ts';
import { useScreenWords } from './use-words.ts';

export function RoleChoice() {
  const { say } = useScreenWords();
  const role = useSession((session) => session.role);
  const handTo = useSession((session) => session.handTo);
  const classId = useSession(({ place }) => place?.classId ?? '');
  const [asked, setAsked] = useState<Role | null>(null);
  const pin = pinOf(classId);
  const { area, hand } = useHandFocus<HTMLDivElement>();
  return (
    <div className="places" ref={area}>
      <Choice
        label={say('role.who')}
        options={ROLES.map((id) => ({ id, text: say(`role.${id}`) }))}
        chosen={role}
        choose={(next) => {
          const locked = pin !== null && asksPin(role, next);
          setAsked(locked ? next : null);
          if (!locked) handTo(next);
        }}
      />
      {asked !== null && pin !== null && (
        <PinField
          key={asked}
          pin={pin}
          done={() => {
            // The field goes.
            hand((part) => part.querySelector<HTMLElement>('[aria-pressed="true"]'));
            handTo(asked);
            setAsked(null);
          }}
        />
      )}
    </div>
  );
}

function PinField({ pin, done }: { readonly pin: string; readonly done: () => void }) {
  const { say } = useScreenWords();
  const id = useId();
  const input = useRef<HTMLInputElement>(null);
  const [wrong, setWrong] = useState(false);
  useLayoutEffect(() => input.current?.focus(), []);
  return (
    <form className="field" onSubmit={(event) => event.preventDefault()}>
      <label htmlFor={id}>{say('role.pin')}</label>
      <input
        ref={input}
        id={id}
        className="in n"
        type="password"
        inputMode="numeric"
        autoComplete="off"
        maxLength={PIN_FIGURES}
        aria-describedby={`${id}-answer`}
        onInput={({ currentTarget }) => {
          const { value } = currentTarget;
          if (value === pin) done();
          else if (value.length === PIN_FIGURES) {
            setWrong(true);
            currentTarget.value = '';
          }
        }}
      />
      <p role="status" id={`${id}-answer`} className="oops">
        {wrong ? say('role.pin-wrong') : ''}
      </p>
    </form>
  );
}
