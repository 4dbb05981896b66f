// The points as they stand, and the next step: show the real build for measuring.

import { useLocation } from 'wouter-preact';
import { useScreenWords } from '../../app/use-words.ts';
import { Help } from './help.tsx';
import type { Shown } from './shown.ts';

export function Go({ at, words, worked, help }: Shown) {
  const screen = useScreenWords();
  const [, navigate] = useLocation();
  const report = worked.value;
  const empty = at.attempt === null || at.attempt.layout.pieces.length === 0;
  const falls = report?.stability?.stands === false;
  const total = empty ? null : (report?.total ?? null);
  const hasPoints = at.challenge.points.length > 0;
  return (
    <div className="go">
      {hasPoints && (
        <p className="points">
          <b>{total === null ? '–' : words.words.number(total)}</b>
          <small>{screen.say(total === null ? 'read.no-points' : falls ? 'read.points-if' : 'read.points-now')}</small>
        </p>
      )}
      <button
        type="button"
        className="btn main"
        aria-disabled={empty}
        onClick={() => {
          if (!empty) navigate('/score');
        }}
      >
        {screen.say('build.show')}
      </button>
      {help && <Help text="help.show" />}
    </div>
  );
}
