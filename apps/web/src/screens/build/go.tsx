// The points as they stand, and the next step: show the real build for measuring.

import { useState } from 'preact/hooks';
import { useLocation } from 'wouter-preact';
import { useScreenWords } from '../../app/use-words.ts';
import { Help } from './help.tsx';
import { pointsKey } from './points-key.ts';
import type { Shown } from './shown.ts';

export function Go({ at, words, worked, help }: Shown) {
  const screen = useScreenWords();
  const [, navigate] = useLocation();
  const [asked, setAsked] = useState(false);
  const report = worked.value;
  const empty = at.attempt === null || at.attempt.layout.pieces.length === 0;
  const total = empty ? null : (report?.total ?? null);
  const tooEarly = empty && asked;
  const hasPoints = at.challenge.points.length > 0;
  return (
    <div className="go">
      {(hasPoints || tooEarly) && (
        <p className="points">
          {hasPoints && <b>{total === null ? '–' : words.words.number(total)}</b>}
          <small role="status">
            {screen.say(
              tooEarly
                ? 'build.show-empty'
                : total === null || report === null
                  ? 'read.no-points'
                  : pointsKey(report, at.challenge),
            )}
          </small>
        </p>
      )}
      <button
        type="button"
        className="btn main"
        aria-disabled={empty}
        onClick={() => {
          if (empty) setAsked(true);
          else navigate('/score');
        }}
      >
        {screen.say('build.show')}
      </button>
      {help && <Help text="help.show" />}
    </div>
  );
}
