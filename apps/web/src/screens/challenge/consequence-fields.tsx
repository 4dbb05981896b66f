// What hangs on a rule: without it no place, or points lost or earned.

import type { Consequence } from '@cairnmark/scoring';
import { useForm } from './form.ts';
import { PointsField } from './points-field.tsx';
import { SelectField } from './select-field.tsx';

export function ConsequenceFields({
  value,
  change,
}: {
  readonly value: Consequence;
  readonly change: (consequence: Consequence) => boolean;
}) {
  const { say } = useForm();
  const points = value.kind === 'must' ? USUAL_POINTS : value.points;
  return (
    <>
      <SelectField
        label={say('challenge.consequence')}
        value={value.kind}
        options={KINDS.map((id) => ({ id, text: say(`challenge.rule-${id}`) }))}
        choose={(kind) => change(kind === 'must' ? { kind } : { kind, points })}
      />
      {value.kind !== 'must' && (
        <PointsField
          label={say('challenge.rule-points')}
          unitName={say('challenge.points-unit')}
          value={value.points}
          least={0}
          change={(typed) => change({ ...value, points: typed })}
        />
      )}
    </>
  );
}

const KINDS: readonly Consequence['kind'][] = ['must', 'costs', 'earns'];
/** What a rule costs or earns until somebody types another number. */
const USUAL_POINTS = 5;
