// What groups work out themselves: with which pi, how close is close, and what a result that agrees earns.

import type { ClassPi } from '@cairnmark/engine';
import { MEASURES } from '@cairnmark/geometry';
import { Icon } from '../../parts/icon.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { useHandFocus } from '../../parts/use-hand-focus.ts';
import { withReward } from '../../store/rule-settings.ts';
import { Fold } from './fold.tsx';
import { useForm } from './form.ts';
import { inLastRow, onAdd } from './in-rows.ts';
import { RewardRow } from './reward-row.tsx';
import { SelectField } from './select-field.tsx';
import { Told } from './told.tsx';
import { useMake } from './use-make.ts';

export function OwnFold() {
  const { challenge, locked, words, ruler, say } = useForm();
  const { faults, make } = useMake();
  const { area, hand } = useHandFocus<HTMLDivElement>();
  const { pi, closeShare, rewards } = challenge.own;
  const percent = closeShare * PERCENT;
  const free = WORKED_OUT.find((id) => rewards.every(({ measure }) => measure !== id));
  return (
    <Fold
      title={say('challenge.own')}
      set={say('challenge.own-set', { pi: words.names.pi[pi], percent: words.number(percent) })}
    >
      <div className="chal-line">
        <SelectField
          label={say('challenge.pi')}
          value={pi}
          options={PIS.map((id) => ({ id, text: words.names.pi[id] }))}
          choose={(chosen) => make((one) => ({ ...one, own: { ...one.own, pi: chosen } }))}
        />
        <NumberField
          label={say('challenge.close')}
          value={percent}
          unit="count"
          unitName="%"
          ruler={ruler}
          least={0}
          most={PERCENT}
          change={(typed) => make((one) => ({ ...one, own: { ...one.own, closeShare: typed / PERCENT } }))}
        />
      </div>
      <p className="chal-note">{say('challenge.close-note', { percent: words.number(percent) })}</p>
      <Told faults={faults} />
      <div ref={area}>
        <h3>{say('challenge.rewards')}</h3>
        {rewards.length === 0 && <p className="mut">{say('challenge.no-rewards')}</p>}
        {rewards.map((reward) => (
          <RewardRow key={reward.measure} {...reward} removed={() => hand(onAdd)} />
        ))}
        {!locked && free !== undefined && (
          <div className="chal-add">
            <button
              type="button"
              className="btn bare"
              onClick={() => {
                if (make(withReward(free, 1))) hand(inLastRow);
              }}
            >
              <Icon name="plus" />
              {say('challenge.add-reward')}
            </button>
          </div>
        )}
      </div>
    </Fold>
  );
}

const PERCENT = 100;
const PIS: readonly ClassPi[] = ['3', '3.14', '22/7', 'key'];
/** Only measures of the build can be worked out by a group; those with a formula are offered first. */
const WORKED_OUT: readonly string[] = [
  ...new Set(['volume', 'paper', 'footprint-area', ...MEASURES.map(({ id }) => id)]),
];
