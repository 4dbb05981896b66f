// That a class is deleted. Whoever did it was on another screen a moment ago: the answer waits at Start, and the focus on it.

import { useEffect, useRef } from 'preact/hooks';
import { useScreenWords } from '../../app/use-words.ts';
import { useSession } from '../../store/use-session.ts';

export function Erased() {
  const words = useScreenWords();
  const name = useSession((session) => session.erased);
  const told = useRef<HTMLParagraphElement>(null);
  useEffect(() => told.current?.focus(), []);
  if (name === null) return null;
  return (
    <p ref={told} className="warnbox" tabIndex={-1}>
      {words.say('start.erased', { name })}
    </p>
  );
}
