// A row of the points table: so many points, for every so much of a measure, rounded or not, within limits.

import type { PointsRow, Rounding } from '@cairnmark/scoring';
import { changeRow, removeRow, withLimit } from '../../store/challenge-changes.ts';
import { AmountField } from './amount-field.tsx';
import { ratesOf } from './amounts-of.ts';
import { useForm } from './form.ts';
import { MeasureSelect } from './measure-select.tsx';
import { PointsField } from './points-field.tsx';
import { Row } from './row.tsx';
import { SelectField } from './select-field.tsx';
import { useMake } from './use-make.ts';

export function PointsRowFields({ row, removed }: { readonly row: PointsRow; readonly removed: () => void }) {
  const { words, inClass, say } = useForm();
  const { faults, make } = useMake();
  const change = (next: (row: PointsRow) => PointsRow): boolean => make(changeRow(row.id, next));
  const { id, measure, points, per, rounding } = row;
  const one = inClass.unit(measure).size;
  return (
    <Row
      name={words.capital(inClass.plainLabel(measure))}
      kind="points"
      faults={faults}
      remove={() => {
        if (make(removeRow(id))) removed();
      }}
    >
      <MeasureSelect
        label={say('challenge.measure')}
        value={measure}
        choose={(chosen) => change((old) => ({ ...old, measure: chosen, per: inClass.unit(chosen).size }))}
      />
      <PointsField
        label={say('challenge.row-points')}
        value={points}
        change={(value) => change((old) => ({ ...old, points: value }))}
      />
      <AmountField
        label={say('challenge.per')}
        measure={measure}
        value={per}
        limits={ratesOf(measure, one)}
        change={(value) => change((old) => ({ ...old, per: value }))}
      />
      <SelectField
        label={say('challenge.rounding')}
        value={rounding}
        options={ROUNDINGS.map((way) => ({ id: way, text: say(`challenge.rounded-${way}`) }))}
        choose={(way) => change((old) => ({ ...old, rounding: way }))}
      />
      {(['capPoints', 'floorPoints'] as const).map((limit) => (
        <PointsField
          key={limit}
          label={say(limit === 'capPoints' ? 'challenge.cap' : 'challenge.floor')}
          value={row[limit] ?? null}
          emptyText={say('challenge.no-limit')}
          change={(value) => change((old) => withLimit(old, limit, value))}
          clear={() => change((old) => withLimit(old, limit, null))}
        />
      ))}
    </Row>
  );
}

const ROUNDINGS: readonly Rounding[] = ['none', 'down', 'nearest', 'up'];
