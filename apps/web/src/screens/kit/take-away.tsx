// The way of a kind out of the kit, or what still names it.

import type { KindOfPiece } from '@cairnmark/engine';
import { useState } from 'preact/hooks';
import { Icon } from '../../parts/icon.tsx';
import { usesOfKind } from '../../store/kind-uses.ts';
import { takeAwayKind } from '../../store/kit-changes.ts';
import { Refused } from './refused.tsx';
import { useKit } from './use-kit.ts';

export function TakeAway({ kind }: { readonly kind: KindOfPiece }) {
  const { at, say, make } = useKit();
  const [refused, setRefused] = useState<readonly string[]>([]);
  const { kinds } = at.challenge.kit;
  const uses = usesOfKind(at.record, at.challenge, kind.id);
  const takeAway = (): void => {
    if (uses.length > 0) return;
    const place = kinds.findIndex(({ id }) => id === kind.id);
    setRefused(make(takeAwayKind(at.challenge.id, kind.id), say('kit.did-take-away', { kind: kind.name }), place));
  };
  return (
    <section className="kit-part" aria-label={say('kit.take-away')}>
      <button type="button" className="btn" aria-disabled={uses.length > 0} onClick={takeAway}>
        <Icon name="take-off" />
        {say('kit.take-away')}
      </button>
      {uses.length > 0 && (
        <>
          <p>{say('kit.in-use')}</p>
          <ul>
            {uses.map(({ use, challenge }) => {
              const sentence = say(`use.${use}`, { challenge });
              return <li key={sentence}>{sentence}</li>;
            })}
          </ul>
        </>
      )}
      <Refused sentences={refused} />
    </section>
  );
}
