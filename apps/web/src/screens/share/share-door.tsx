// The button on the Score card that opens the ways out and in. What stands behind it comes when it is pressed, or, so that
// a lesson goes on when the network does not, while nothing else is to do.

import { loadPlanWords } from '@cairnmark/words';
import type { ComponentType } from 'preact';
import { useCallback, useEffect, useState } from 'preact/hooks';
import { useArrival } from '../../app/use-arrival.ts';
import { useScreenWords } from '../../app/use-words.ts';
import { Icon } from '../../parts/icon.tsx';

export function ShareDoor() {
  const { say, language } = useScreenWords();
  // Each press shows the dialog anew.
  const [pressed, setPressed] = useState(0);
  useEffect(() => {
    const ahead = setTimeout(() => void Promise.allSettled([loadShare(), loadPlanWords(language)]), AHEAD_MS);
    return () => clearTimeout(ahead);
  }, [language]);
  return (
    <>
      <button type="button" className="btn" onClick={() => setPressed(pressed + 1)}>
        <Icon name="screen" />
        {say('score-card.share')}
      </button>
      {pressed > 0 && <Behind key={pressed} />}
    </>
  );
}

function Behind() {
  const { say } = useScreenWords();
  const { what: Share, lost, again } = useArrival(useCallback(loadShare, []));
  if (Share !== null) return <Share />;
  if (!lost) return <p role="status">{say('frame.loading')}</p>;
  return (
    <div>
      <p role="alert">{say('frame.not-here-what')}</p>
      <button type="button" className="btn" onClick={again}>
        {say('frame.again')}
      </button>
    </div>
  );
}

const loadShare = async (): Promise<ComponentType> => (await import('./share-dialog.tsx')).default;

/** By then the card is worked out and drawn. */
const AHEAD_MS = 4000;
