// What an own result of one measure earns when it agrees.

import { MEASURES } from '@cairnmark/geometry';
import { withReward } from '../../store/rule-settings.ts';
import { useForm } from './form.ts';
import { MeasureSelect } from './measure-select.tsx';
import { PointsField } from './points-field.tsx';
import { Row } from './row.tsx';
import { useMake } from './use-make.ts';

export function RewardRow({
  measure,
  points,
  removed,
}: {
  readonly measure: string;
  readonly points: number;
  readonly removed: () => void;
}) {
  const { challenge, words, inClass, say } = useForm();
  const { faults, make } = useMake();
  const others = challenge.own.rewards.map((reward) => reward.measure).filter((one) => one !== measure);
  return (
    <Row
      name={words.capital(inClass.plainLabel(measure))}
      kind="reward"
      faults={faults}
      remove={() => {
        if (make(withReward(measure, null))) removed();
      }}
    >
      <MeasureSelect
        label={say('challenge.measure')}
        value={measure}
        only={(one) => WORKED_OUT.has(one) && !others.includes(one)}
        choose={(chosen) =>
          make((one) => ({
            ...one,
            own: {
              ...one.own,
              rewards: one.own.rewards.map((reward) =>
                reward.measure === measure ? { ...reward, measure: chosen } : reward,
              ),
            },
          }))
        }
      />
      <PointsField
        label={say('challenge.reward-points')}
        unitName={say('challenge.points-unit')}
        value={points}
        change={(typed) => make(withReward(measure, typed))}
      />
    </Row>
  );
}

const WORKED_OUT: ReadonlySet<string> = new Set(MEASURES.map(({ id }) => id));
