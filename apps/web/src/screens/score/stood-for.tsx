// For how long the build stood: with a stopwatch, or typed.

import { SECONDS_MOST } from '@cairnmark/engine';
import { NumberField } from '../../parts/number-field.tsx';
import { secondsOf, withFall, withoutSeconds, withSeconds } from '../../store/observed-changes.ts';
import { useSession } from '../../store/use-session.ts';
import { useCard } from './card.ts';
import { StopwatchPanel } from './stopwatch-panel.tsx';

export function StoodFor() {
  const { at, ruler, say } = useCard();
  const changeTry = useSession((session) => session.changeTry);
  const fell = at.attempt.state.kind === 'fell';
  return (
    <div className="card-part">
      <h3>{say('score-card.watch')}</h3>
      <StopwatchPanel
        stood={(time) => changeTry((attempt) => withSeconds(time)({ ...attempt, state: { kind: 'stood' } }))}
        fell={(time) => changeTry(withFall(time))}
      />
      <NumberField
        label={say(fell ? 'score-card.seconds-fell' : 'score-card.seconds')}
        value={secondsOf(at.attempt)}
        unit="s"
        ruler={ruler}
        least={0}
        most={SECONDS_MOST}
        change={(time) => changeTry(withSeconds(time))}
        clear={fell ? undefined : () => changeTry(withoutSeconds)}
      />
    </div>
  );
}
