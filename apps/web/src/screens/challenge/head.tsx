// The name of the challenge, what it comes down to, and what may be done with all of it.

import { useLayoutEffect, useRef } from 'preact/hooks';
import { Link } from 'wouter-preact';
import { Icon } from '../../parts/icon.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { hasCopiesOnly } from '../../store/challenge-lock.ts';
import { useForm } from './form.ts';
import { Told } from './told.tsx';
import { useCopies } from './use-copies.ts';
import { useMake } from './use-make.ts';

export function Head({
  arrive,
  name,
  named,
}: {
  readonly arrive: (id: string) => void;
  /** The name is to be filled in now. */
  readonly name: boolean;
  readonly named: () => void;
}) {
  const { at, challenge, locked, words, inClass, say } = useForm();
  const { make, faults } = useMake();
  const copies = useCopies(arrive);
  const head = useRef<HTMLElement>(null);
  useLayoutEffect(() => {
    if (!name) return;
    const field = head.current?.querySelector('input');
    field?.focus();
    field?.select();
    named();
  }, [name, named]);
  const copied = hasCopiesOnly(at.record, challenge.id);
  return (
    <header className="chal-head" ref={head}>
      <TextField
        className="chal-name"
        label={say('challenge.name')}
        value={challenge.name}
        empty={say('challenge.text-empty', { kept: challenge.name })}
        change={(typed) => make((one) => ({ ...one, name: typed }))}
      />
      <div className="chal-do">
        <button type="button" className="btn" onClick={copies.copy}>
          <Icon name="copy" />
          {say('challenge.copy')}
        </button>
        {locked && (
          <button type="button" className="btn" onClick={copies.copyWithBuilds}>
            <Icon name="copy" />
            {say('challenge.copy-with-builds')}
          </button>
        )}
        <Link className="btn main" href="/build">
          {say('challenge.build-it')}
        </Link>
      </div>
      <p className="mut chal-aim">{say('challenge.aim', { order: words.capital(inClass.order(challenge.ranking)) })}</p>
      {locked && (
        <p className="chal-locked note">
          {say('challenge.locked')} {say('challenge.locked-copies')}
        </p>
      )}
      {copied && <p className="chal-locked warnbox">{say('challenge.copied')}</p>}
      <Told faults={[...faults, ...copies.faults]} />
    </header>
  );
}
