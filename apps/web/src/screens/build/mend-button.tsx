// The button that does what the verdict says: move the pieces, or take off the piece too many.

import { moveBy } from '@cairnmark/geometry';
import { useScreenWords } from '../../app/use-words.ts';
import { useSession } from '../../store/use-session.ts';
import type { BuildState } from './build-state.ts';
import { withPieces } from './pieces-of-layout.ts';
import type { Shown } from './shown.ts';

export function MendButton({ editor, at, worked, state }: Shown & { readonly state: BuildState }) {
  const screen = useScreenWords();
  const layOut = useSession((session) => session.layOut);
  // A moment after a tap the sentence is still of the build before: a second tap would do it once too often.
  const tap = (act: () => void) => ({ 'aria-disabled': worked.working, onClick: () => worked.working || act() });
  const mend = state.is === 'judged' ? state.stability.mend : null;
  if (mend !== null && at.attempt?.layout.kind === 'laid-out') {
    const { layout } = at.attempt;
    return (
      <button type="button" className="btn" {...tap(() => layOut(withPieces(layout, moveBy(layout.pieces, mend))))}>
        {screen.say('verdict.move-them')}
      </button>
    );
  }
  const last = editor.pieces.length - 1;
  if (state.is === 'rule-broken' && last >= 0 && hasTooMany(state.broken, worked.value)) {
    return (
      <button type="button" className="btn" {...tap(() => editor.edit({ do: 'take-off', piece: last }))}>
        {screen.say('verdict.take-off', { number: last + 1 })}
      </button>
    );
  }
  return null;
}

function hasTooMany(broken: readonly string[], report: Shown['worked']['value']): boolean {
  const line = report?.requirements.find(({ requirement }) => broken.includes(requirement));
  return line?.measure === 'pieces' && line.value !== null && line.limit !== null && line.value > line.limit;
}
