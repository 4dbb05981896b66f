// How long it takes to fold one piece of each solid, as the teacher says.

import { NumberField } from '../../parts/number-field.tsx';
import { useLab } from './lab.ts';

/** Minutes. */
const MOST = 600;

export function MinutesFold() {
  const { say, kit, minutes, setMinutes, ruler } = useLab();
  return (
    <details className="fair-fold">
      <summary>{say('lab.minutes')}</summary>
      <p className="mut">{say('lab.minutes-what')}</p>
      <div className="fair-minutes">
        {kit.kinds.map(({ id, name }) => (
          <NumberField
            key={id}
            label={say('lab.minutes-of', { solid: name })}
            value={minutes[id] ?? null}
            unit="count"
            least={0.1}
            most={MOST}
            ruler={ruler}
            change={(value) => setMinutes(id, value)}
            clear={() => setMinutes(id, null)}
          />
        ))}
      </div>
    </details>
  );
}
