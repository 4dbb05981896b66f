// The build read back in sentences, from the bottom up: for ears, and for checking against the real one.

import { useScreenWords } from '../../app/use-words.ts';
import type { Shown } from './shown.ts';
import { useReadBack } from './use-read-back.ts';

export function BuildInWords(props: Shown) {
  const screen = useScreenWords();
  const lines = useReadBack(props);
  return (
    <details className="in-words">
      <summary>{screen.say('back.title')}</summary>
      <ol>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ol>
    </details>
  );
}
