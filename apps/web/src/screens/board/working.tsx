// While the scores are worked out: how far it is, and a way to stop. And what keeps a class from being scored.

import type { ClassScore, EngineIssue } from '@cairnmark/engine';
import { useCardWords } from '../../app/card-words.tsx';
import { useWords } from '../../app/use-words.ts';
import { FAULTS_TOLD_MOST } from '../../parts/faults-told.ts';
import type { Asked } from '../../workers/use-engine.ts';
import { useEngine } from '../../workers/use-engine.ts';

/** `worked`: of a question that was put. */
export function Working({ worked }: { readonly worked: Asked<ClassScore> }) {
  const words = useCardWords();
  const engine = useEngine();
  const { progress, working, value, issues, failed, stopped, again } = worked;
  if (issues.length > 0) return <Refused issues={issues} />;
  if (failed !== null) {
    return (
      <p className="badbox" role="alert">
        {words.say('board.failed')}
      </p>
    );
  }
  if (stopped) {
    return (
      <p className="board-working" role="status">
        {words.say(value === null ? 'board.stopped' : 'board.stopped-old')}
        <button type="button" className="btn" onClick={again}>
          {words.say('verdict.again')}
        </button>
      </p>
    );
  }
  if (!working || (value !== null && progress === null)) return null;
  return (
    <p className="board-working" role="status">
      {progress === null
        ? words.say('frame.loading')
        : words.say('board.working', { solved: progress.solved, most: progress.most })}
      {progress !== null && (
        <button type="button" className="btn" onClick={() => engine.cancel()}>
          {words.say('board.stop')}
        </button>
      )}
    </p>
  );
}

function Refused({ issues }: { readonly issues: readonly EngineIssue[] }) {
  const screen = useCardWords();
  const words = useWords();
  const told = issues.slice(0, FAULTS_TOLD_MOST).map(words.issue);
  const more = issues.length - told.length;
  return (
    <div className="badbox" role="alert">
      <p>
        <b>{screen.say('frame.refused')}</b>
      </p>
      <ul>
        {told.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
        {more > 0 && <li>{screen.say('start.file-more', { count: more })}</li>}
      </ul>
    </div>
  );
}
