// Curriculum codes, or words of the teacher's own.

import { Icon } from '../../parts/icon.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { useHandFocus } from '../../parts/use-hand-focus.ts';
import { nameTold } from '../../store/challenge-copies.ts';
import { Fold } from './fold.tsx';
import { useForm } from './form.ts';
import { inLastRow, onAdd } from './in-rows.ts';
import { Row } from './row.tsx';
import { Told } from './told.tsx';
import { useMake } from './use-make.ts';

export function LabelsFold() {
  const { challenge, say } = useForm();
  const { faults, make } = useMake();
  const { area, hand } = useHandFocus<HTMLDivElement>();
  const { labels } = challenge;
  const change = (next: readonly string[]): boolean => make((one) => ({ ...one, labels: next }));
  return (
    <Fold title={say('challenge.labels')} set={labels.length === 0 ? say('challenge.labels-none') : labels.join(', ')}>
      <div ref={area}>
        <p className="chal-note">{say('challenge.labels-note')}</p>
        {labels.map((label, k) => (
          <Row
            key={k}
            name={label}
            kind="named"
            faults={[]}
            staysOpen
            remove={() => {
              if (change(labels.filter((_, at) => at !== k))) hand(onAdd);
            }}
          >
            <TextField
              label={say('challenge.label')}
              value={label}
              empty={say('challenge.text-empty', { kept: label })}
              change={(text) => change(labels.map((one, at) => (at === k ? text : one)))}
            />
          </Row>
        ))}
        <div className="chal-add">
          <button
            type="button"
            className="btn bare"
            onClick={() => {
              if (change([...labels, nameTold(say('challenge.new-label'), labels)])) hand(inLastRow);
            }}
          >
            <Icon name="plus" />
            {say('challenge.add-label')}
          </button>
        </div>
        <Told faults={faults} />
      </div>
    </Fold>
  );
}
