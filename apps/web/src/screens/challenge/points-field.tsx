// A field for points: given or taken.

import { POINTS_MOST } from '@cairnmark/engine';
import { NumberField } from '../../parts/number-field.tsx';
import { useForm } from './form.ts';

export function PointsField({
  label,
  value,
  least = -POINTS_MOST,
  unitName,
  emptyText,
  change,
  clear,
}: {
  readonly label: string;
  /** null: none are set. */
  readonly value: number | null;
  readonly least?: number;
  readonly unitName?: string;
  readonly emptyText?: string;
  readonly change: (points: number) => void;
  readonly clear?: () => void;
}) {
  const { ruler } = useForm();
  return (
    <NumberField
      label={label}
      value={value}
      unit="count"
      unitName={unitName}
      ruler={ruler}
      least={least}
      most={POINTS_MOST}
      emptyText={emptyText}
      change={change}
      clear={clear}
    />
  );
}
