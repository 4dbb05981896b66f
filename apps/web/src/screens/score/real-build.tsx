// What people saw of the real build: how it ended, the seconds, the ruler, and that somebody has seen it. Open until then.

import { useState } from 'preact/hooks';
import { CardHelp } from '../../app/card-help.tsx';
import { Choice } from '../../parts/choice.tsx';
import { withState } from '../../store/observed-changes.ts';
import { useSession } from '../../store/use-session.ts';
import { useCard } from './card.ts';
import { Readings } from './readings.tsx';
import { SeenBy } from './seen-by.tsx';
import { StoodFor } from './stood-for.tsx';
import { isTimed } from './use-stopwatch.ts';

const STATES = ['stood', 'fell-before-measuring', 'fell', 'not-taking-part', 'absent'] as const;

export function RealBuild() {
  const { at, say, words } = useCard();
  const changeTry = useSession((session) => session.changeTry);
  const { state, confirmedBy } = at.attempt;
  const built = state.kind !== 'absent' && state.kind !== 'not-taking-part';
  const classId = useSession(({ place }) => place?.classId ?? '');
  // A watch that runs stays in sight after a reload.
  const [open, setOpen] = useState(() => built && (confirmedBy === null || isTimed(classId, at.attempt.id)));
  return (
    <>
      <CardHelp items={[['help.real', say('score-card.real')]]} />
      <details className="card-real" open={open} onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
        <summary>
          <span className="card-real-head">
            <h2>{say('score-card.real')}</h2>
            {built && (
              <span className={confirmedBy === null ? 'card-open-yet' : 'mut'}>
                {confirmedBy === null ? say('score-card.real-open') : say('score-card.real-seen', { who: confirmedBy })}
              </span>
            )}
          </span>
        </summary>
        <div className="card-real-parts">
          <CardHelp
            items={[
              ['help.state', say('score-card.state')],
              ...(built
                ? ([
                    ['help.watch', say('score-card.start'), say('score-card.go-on'), say('score-card.reset')],
                    ['help.seconds', say('score-card.seconds'), say('score-card.seconds-fell')],
                    ['help.reading', say('score-card.reading'), say('score-card.add-reading')],
                    ['help.person', say('score-card.who')],
                    ['help.seen', say('score-card.seen'), say('score-card.seen-undo')],
                  ] as const)
                : []),
            ]}
          />
          <Choice
            label={say('score-card.state')}
            options={STATES.map((id) => ({ id, text: say(`score-card.state-${id}`) }))}
            chosen={state.kind}
            choose={(kind) => changeTry(withState(kind))}
          />
          {built && (
            <>
              <div className="card-real-two">
                <StoodFor />
                <Readings />
              </div>
              <p className="warnbox">{words.cautions['tall-towers']}</p>
              <SeenBy />
            </>
          )}
        </div>
      </details>
    </>
  );
}
