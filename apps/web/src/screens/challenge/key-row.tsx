// One thing that builds are compared by, with its place in the order.

import type { RankingKey } from '@cairnmark/scoring';
import { Choice } from '../../parts/choice.tsx';
import { changeKey, moveKey, removeKey } from '../../store/rule-settings.ts';
import { usualStep } from '../../store/usual-step.ts';
import { AmountField } from './amount-field.tsx';
import { limitsOf } from './amounts-of.ts';
import { useForm } from './form.ts';
import { MeasureSelect } from './measure-select.tsx';
import { MoveButtons } from './move-buttons.tsx';
import { Row } from './row.tsx';
import { useMake } from './use-make.ts';

export function KeyRow({
  value: { by, better, roundTo },
  place,
  last,
  removed,
}: {
  readonly value: RankingKey;
  readonly place: number;
  readonly last: number;
  readonly removed: () => void;
}) {
  const { challenge, words, inClass, say } = useForm();
  const { faults, make } = useMake();
  const change = (next: Partial<RankingKey>): boolean => make(changeKey(place, (key) => ({ ...key, ...next })));
  const name = words.capital(inClass.plainLabel(by));
  return (
    <Row
      name={say(place === 0 ? 'challenge.key-first' : 'challenge.key-then', { name })}
      kind="key"
      faults={faults}
      remove={
        last === 0
          ? null
          : () => {
              if (make(removeKey(place))) removed();
            }
      }
    >
      <MeasureSelect
        label={say(place === 0 ? 'challenge.first' : 'challenge.then')}
        value={by}
        withPoints
        choose={(measure) =>
          change({ by: measure, roundTo: usualStep(measure, challenge, inClass.unit(measure).size) })
        }
      />
      <Choice
        label={say('challenge.better')}
        options={[
          { id: 'more', text: say('challenge.more') },
          { id: 'less', text: say('challenge.less') },
        ]}
        chosen={better}
        choose={(chosen) => change({ better: chosen })}
      />
      <AmountField
        label={say('challenge.round-to')}
        measure={by}
        value={roundTo === 0 ? null : roundTo}
        emptyText={say('challenge.not-rounded')}
        limits={{ ...limitsOf(by), whole: false }}
        change={(step) => change({ roundTo: step })}
        clear={() => change({ roundTo: 0 })}
      />
      <MoveButtons name={name} place={place} last={last} move={(step) => make(moveKey(place, step))} />
    </Row>
  );
}
