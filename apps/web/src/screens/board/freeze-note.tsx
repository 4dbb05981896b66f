// That the board is frozen, and since when: always in sight while it is.

import { useScreenWords } from '../../app/use-words.ts';
import { Icon } from '../../parts/icon.tsx';
import type { Freezing } from './use-frozen.ts';

export function FreezeNote({ freezing: { frozen, unfreeze } }: { readonly freezing: Freezing }) {
  const words = useScreenWords();
  if (frozen === null) return <div role="status" />;
  const time = new Date(frozen.since).toLocaleTimeString(words.language, { hour: 'numeric', minute: '2-digit' });
  const lost = frozen.copy === 'lost';
  return (
    <div role="status" className="frozen">
      <Icon name="clock" />
      <p>
        {words.say(lost ? 'board.frozen-lost' : 'board.frozen', { time })}{' '}
        {frozen.copy === 'not-kept' && words.say('board.frozen-not-kept')}
      </p>
      <button type="button" className="btn" onClick={unfreeze}>
        {words.say('board.unfreeze')}
      </button>
    </div>
  );
}
