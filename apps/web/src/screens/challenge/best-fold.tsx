// The best possible build, folded away: what is in it comes over the network when somebody opens it.

import { useState } from 'preact/hooks';
import { Arriving } from '../../app/arriving.tsx';
import { TalkSpeaking } from '../../app/talk-words.tsx';
import { useForm } from './form.ts';

export function BestFold() {
  const { challenge, say } = useForm();
  const [opened, setOpened] = useState(false);
  return (
    <details className="chal-fold" onToggle={({ currentTarget }) => currentTarget.open && setOpened(true)}>
      <summary>
        <span className="chal-fold-title">{say('challenge.best')}</span>{' '}
        <span className="chal-fold-set">
          {say(challenge.bestShown === true ? 'challenge.best-shown' : 'challenge.best-not-shown')}
        </span>
      </summary>
      <div className="chal-fold-in">
        {opened && (
          <TalkSpeaking>
            <Arriving ask={loadBest}>{(BestPossible) => <BestPossible />}</Arriving>
          </TalkSpeaking>
        )}
      </div>
    </details>
  );
}

/** With the search for it, which nothing else of the screen needs. */
const loadBest = async () => (await import('./best-possible.tsx')).default;
