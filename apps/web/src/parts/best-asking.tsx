// Asks for the best possible build, says how far the search is, and stops it.

import type { Words } from '@cairnmark/words';
import type { ComponentChildren } from 'preact';
import { useTalkWords } from '../app/talk-words.tsx';
import type { Best } from '../workers/use-best.ts';

export function BestAsking({
  best: { search, stop },
  words,
  told,
  className,
  children,
}: {
  readonly best: Pick<Best, 'search' | 'stop'>;
  readonly words: Pick<Words, 'number'>;
  /** What is told of a search that has come to its end; '': nothing. */
  readonly told: string;
  readonly className: string;
  /** The button that asks, while nothing is being worked out. */
  readonly children: ComponentChildren;
}) {
  const { say } = useTalkWords();
  return (
    <div className={className} aria-busy={search.kind === 'working'}>
      {search.kind === 'working' ? (
        <button type="button" className="btn" onClick={stop}>
          {say('best.stop')}
        </button>
      ) : (
        children
      )}
      <p className="mut" role="status">
        {search.kind === 'working' && say('best.working', { count: words.number(search.tried) })}
        {(search.kind === 'stopped' || search.kind === 'failed') && say(`best.${search.kind}`)}
        {search.kind === 'found' && told}
      </p>
    </div>
  );
}
