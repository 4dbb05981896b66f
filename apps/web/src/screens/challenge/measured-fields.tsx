// A rule on a measure: which one, exactly or at least or at most, and how much.

import type { Comparison, MeasuredRule } from '@cairnmark/scoring';
import { AmountField } from './amount-field.tsx';
import { limitsOf, usualLimit } from './amounts-of.ts';
import { useForm } from './form.ts';
import { MeasureSelect } from './measure-select.tsx';
import { SelectField } from './select-field.tsx';

export function MeasuredFields({
  rule,
  change,
}: {
  readonly rule: MeasuredRule;
  readonly change: (rule: MeasuredRule) => boolean;
}) {
  const { inClass, say } = useForm();
  return (
    <>
      <MeasureSelect
        label={say('challenge.measure')}
        value={rule.measure}
        choose={(measure) => change({ ...rule, measure, limit: usualLimit(measure, inClass.unit(measure).size) })}
      />
      <SelectField
        label={say('challenge.comparison')}
        value={rule.comparison}
        options={COMPARISONS.map((id) => ({ id, text: say(`challenge.is-${id}`) }))}
        choose={(comparison) => change({ ...rule, comparison })}
      />
      <AmountField
        label={say('challenge.limit')}
        measure={rule.measure}
        value={rule.limit}
        limits={limitsOf(rule.measure)}
        change={(limit) => change({ ...rule, limit })}
      />
    </>
  );
}

const COMPARISONS: readonly Comparison[] = ['exactly', 'at-least', 'at-most'];
