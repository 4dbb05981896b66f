// What stands in place of the card while it is worked out, or when it cannot be.

import type { EngineIssue } from '@cairnmark/engine';
import type { Words } from '@cairnmark/words';
import { useCardWords } from '../../app/card-words.tsx';
import type { At } from '../../store/where-at.ts';
import type { Asked } from '../../workers/use-engine.ts';
import { useEngine } from '../../workers/use-engine.ts';
import type { Worked } from '../../workers/worked.ts';

export function Working({ at, worked }: { readonly at: At; readonly worked: Asked<unknown> }) {
  const { say } = useCardWords();
  return (
    <div className="page">
      <p className="mut">{at.challenge.name}</p>
      <h1>{at.group.name}</h1>
      <p role="status">{say(textOf(worked))}</p>
      <Progress worked={worked} />
      <Again worked={worked} />
    </div>
  );
}

export const textOf = ({ failed, stopped }: Worked<unknown>) =>
  failed !== null ? 'score-card.failed' : stopped ? 'verdict.stopped' : 'score-card.working';

export function Again({ worked: { failed, stopped, again } }: { readonly worked: Asked<unknown> }) {
  const { say } = useCardWords();
  if (failed === null && !stopped) return null;
  return (
    <button type="button" className="btn" onClick={again}>
      {say('verdict.again')}
    </button>
  );
}

/** Only a hard build is long in the making: then it says how far it is, and can be stopped. */
export function Progress({ worked: { progress } }: { readonly worked: Worked<unknown> }) {
  const { say } = useCardWords();
  const engine = useEngine();
  if (progress === null) return null;
  return (
    <div className="card-progress">
      <progress value={progress.solved} max={progress.most} aria-label={say('score-card.working')} />
      <span>{say('score-card.progress', { solved: progress.solved, most: progress.most })}</span>
      <button type="button" className="btn" onClick={() => engine.cancel()}>
        {say('score-card.cancel')}
      </button>
    </div>
  );
}

export function Refused({ issues, words }: { readonly issues: readonly EngineIssue[]; readonly words: Words }) {
  const { say } = useCardWords();
  return (
    <div className="page">
      <h1>{say('score-card.title')}</h1>
      <div className="badbox" role="alert">
        <p>
          <b>{say('frame.refused')}</b>
        </p>
        <ul>
          {issues.map((issue) => (
            <li key={`${words.place(issue.path)} ${issue.code}`}>{words.issue(issue)}</li>
          ))}
        </ul>
      </div>
    </div>
  );
}
