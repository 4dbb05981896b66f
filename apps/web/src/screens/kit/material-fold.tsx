// Material and friction of the whole kit, folded away: a sentence says what it is, and opens it.

import type { RefObject } from 'preact';
import { common } from './common.ts';
import { Fold } from './fold.tsx';
import { MaterialFields } from './material-fields.tsx';
import { PairFrictions } from './pair-frictions.tsx';
import { useKit } from './use-kit.ts';

export function MaterialFold({ fold }: { readonly fold: RefObject<HTMLDetailsElement> }) {
  const { at, say } = useKit();
  const { kinds } = at.challenge.kit;
  return (
    <Fold title={say('kit.material')} help={say('kit.help-material')} fold={fold}>
      {() => (
        <>
          <h2>{say('kit.for-all')}</h2>
          <MaterialFields kinds={kinds} />
          <PairFrictions />
        </>
      )}
    </Fold>
  );
}

/** What the whole kit is made of, in a sentence. */
export function MaterialSentence({ open }: { readonly open: () => void }) {
  const { at, say, words } = useKit();
  const { kinds } = at.challenge.kit;
  const grams = common(kinds.map(({ material }) => (material.kind === 'folded-paper' ? material.gramsPerM2 : null)));
  const friction = common(kinds.map((kind) => kind.friction));
  return (
    <p className="mut kit-material-now">
      {grams === null || friction === null
        ? say('kit.material-mixed')
        : say('kit.material-now', { grams: words.number(grams), friction: words.number(friction) })}{' '}
      <button type="button" className="kit-link" onClick={open}>
        {say('kit.change-material')}
      </button>
    </p>
  );
}
