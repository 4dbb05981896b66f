// A group that has not begun at this challenge: where to begin, or that it takes no part.

import { Link } from 'wouter-preact';
import { useCardWords } from '../../app/card-words.tsx';
import { withState } from '../../store/observed-changes.ts';
import { useSession } from '../../store/use-session.ts';
import type { At } from '../../store/where-at.ts';

export function NoTry({ at }: { readonly at: At }) {
  const { say } = useCardWords();
  const changeTry = useSession((session) => session.changeTry);
  return (
    <div className="page card-no-try">
      <p className="mut">{at.challenge.name}</p>
      <h1>{at.group.name}</h1>
      <div className="card-nothing">
        <p>
          <b>{say('score-card.none')}</b>
        </p>
        <p>{say('score-card.none-what')}</p>
      </div>
      <Link className="btn main" href="/build">
        {say('score-card.to-build')}
      </Link>
      <div className="field">
        <span className="lab">{say('score-card.not-here')}</span>
        <span className="card-row">
          {(['absent', 'not-taking-part'] as const).map((kind) => (
            <button key={kind} type="button" className="btn" onClick={() => changeTry(withState(kind))}>
              {say(`score-card.state-${kind}`)}
            </button>
          ))}
        </span>
      </div>
    </div>
  );
}
