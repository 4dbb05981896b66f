// Freezing: the button, and that the board is frozen and since when, in sight as long as it is.

import { useCardWords } from '../../app/card-words.tsx';
import { Icon } from '../../parts/icon.tsx';
import type { Frozen } from '../../store/board-state.ts';
import type { Freezing } from './use-frozen.ts';

export function FreezeNote({ frozen }: { readonly frozen: Frozen | null }) {
  const words = useCardWords();
  if (frozen === null) return <div role="status" />;
  const time = new Date(frozen.since).toLocaleTimeString(words.language, { hour: 'numeric', minute: '2-digit' });
  const lost = frozen.copy === 'lost';
  return (
    <div role="status" className="board-frozen">
      <Icon name="clock" />
      <p>
        {words.say(lost ? 'board.frozen-lost' : 'board.frozen', { time })}{' '}
        {frozen.copy === 'not-kept' && words.say('board.frozen-not-kept')}
      </p>
    </div>
  );
}

export function FreezeButton({ freezing: { frozen, freeze, unfreeze } }: { readonly freezing: Freezing }) {
  const words = useCardWords();
  return (
    <button type="button" className="btn" onClick={frozen === null ? freeze : unfreeze}>
      {words.say(frozen === null ? 'board.freeze' : 'board.unfreeze')}
    </button>
  );
}
