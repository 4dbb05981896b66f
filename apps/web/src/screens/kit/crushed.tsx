// Pieces that are out of use, and those that came back. Together with the whole ones they are always as many as were made.

import type { KindOfPiece } from '@cairnmark/engine';
import { wholePieces } from '@cairnmark/engine';
import { Icon } from '../../parts/icon.tsx';
import { crushKind } from '../../store/kit-changes.ts';
import { useKit } from './use-kit.ts';

export function Crushed({ kind }: { readonly kind: KindOfPiece }) {
  const { at, say, make } = useKit();
  const whole = wholePieces(kind);
  const { stock, crushed = 0 } = kind;
  const change = (by: 1 | -1): void => {
    if ((by === 1 ? whole : crushed) === 0) return;
    make(
      crushKind(at.challenge.id, kind.id, crushed + by),
      say(by === 1 ? 'kit.did-crush' : 'kit.did-repair', { kind: kind.name, whole: whole - by }),
    );
  };
  return (
    <section className="kit-part" aria-label={say('kit.crushed')}>
      <h2>{say('kit.crushed')}</h2>
      <p role="status">
        {say('kit.crushed-now', { stock, crushed, whole })}{' '}
        {whole === 0 ? say('kit.none-whole') : crushed === 0 && say('kit.none-crushed')}
      </p>
      <div className="kit-choices">
        <button type="button" className="btn" aria-disabled={whole === 0} onClick={() => change(1)}>
          <Icon name="minus" />
          {say('kit.one-crushed')}
        </button>
        <button type="button" className="btn" aria-disabled={crushed === 0} onClick={() => change(-1)}>
          <Icon name="plus" />
          {say('kit.one-repaired')}
        </button>
      </div>
      <p className="mut">{say('kit.repaired-heavier')}</p>
    </section>
  );
}
