// The board alone on the whole screen, without tabs and the bars of the browser.

import type { RefObject } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { useCardWords } from '../../app/card-words.tsx';
import { Icon } from '../../parts/icon.tsx';

export function FullScreen({ section }: { readonly section: RefObject<HTMLElement> }) {
  const words = useCardWords();
  const [isFull, setFull] = useState(document.fullscreenElement !== null);
  useEffect(() => {
    const look = (): void => setFull(document.fullscreenElement !== null);
    document.addEventListener('fullscreenchange', look);
    return () => document.removeEventListener('fullscreenchange', look);
  }, []);
  if (!document.fullscreenEnabled) return null;
  const toggle = (): void => {
    const asked = isFull ? document.exitFullscreen() : section.current?.requestFullscreen();
    // A browser that refuses leaves the page as it is.
    asked?.catch(() => undefined);
  };
  return (
    <button type="button" className="btn" onClick={toggle}>
      <Icon name="screen" />
      {words.say(isFull ? 'board.leave-full-screen' : 'board.full-screen')}
    </button>
  );
}
