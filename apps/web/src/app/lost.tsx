// Something of the screen did not come over the network: said, and asked for again.

import { useScreenWords } from './use-words.ts';

export function Lost({ again }: { readonly again: () => void }) {
  const { say } = useScreenWords();
  return (
    <div className="page">
      <div role="alert">
        <h1>{say('frame.not-here')}</h1>
        <p>{say('frame.not-here-what')}</p>
      </div>
      <button type="button" className="btn main" onClick={again}>
        {say('frame.again')}
      </button>
    </div>
  );
}
