// A field for an amount of a measure, in the unit of the class, with the noun of what is counted behind it.

import { unitOf } from '@cairnmark/engine';
import { numberAndUnit } from '../../parts/number-and-unit.ts';
import { NumberField } from '../../parts/number-field.tsx';
import type { AmountLimits } from './amounts-of.ts';
import { useForm } from './form.ts';

export function AmountField({
  label,
  measure,
  value,
  limits,
  emptyText,
  change,
  clear,
}: {
  readonly label: string;
  readonly measure: string;
  /** In the engine's unit; null: none is set. */
  readonly value: number | null;
  readonly limits: AmountLimits;
  readonly emptyText?: string;
  readonly change: (value: number) => void;
  readonly clear?: () => void;
}) {
  const { inClass, ruler } = useForm();
  const noun = numberAndUnit(inClass.exactAmount(measure, value ?? limits.least)).unit;
  return (
    <NumberField
      label={label}
      value={value}
      unit={unitOf(measure)}
      unitName={noun === '' ? inClass.unit(measure).name : noun}
      ruler={ruler}
      {...limits}
      emptyText={emptyText}
      change={change}
      clear={clear}
    />
  );
}
