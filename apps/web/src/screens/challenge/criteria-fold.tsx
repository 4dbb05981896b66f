// What judges mark from 0 to 4.

import { Icon } from '../../parts/icon.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { useHandFocus } from '../../parts/use-hand-focus.ts';
import { addCriterion, changeCriterion, removeCriterion } from '../../store/challenge-changes.ts';
import { nameTold } from '../../store/challenge-copies.ts';
import { isAskedFor, keysOf } from '../../store/rule-settings.ts';
import { Fold } from './fold.tsx';
import { useForm } from './form.ts';
import { inLastRow, onAdd } from './in-rows.ts';
import { Row } from './row.tsx';
import { useMake } from './use-make.ts';

export function CriteriaFold() {
  const { challenge, locked, words, say } = useForm();
  const { make } = useMake();
  const { area, hand } = useHandFocus<HTMLDivElement>();
  const names = challenge.criteria.map(({ name }) => name);
  const add = (): void => {
    if (make(addCriterion(nameTold(say('challenge.new-criterion'), names)))) hand(inLastRow);
  };
  return (
    <Fold
      title={say('challenge.criteria')}
      set={names.length === 0 ? say('challenge.criteria-none') : words.listed(names)}
    >
      <div ref={area}>
        <p className="chal-note">{say('challenge.criteria-note')}</p>
        {challenge.criteria.map((criterion) => (
          <CriterionRow key={criterion.id} {...criterion} removed={() => hand(onAdd)} />
        ))}
        {!locked && (
          <div className="chal-add">
            <button type="button" className="btn bare" onClick={add}>
              <Icon name="plus" />
              {say('challenge.add-criterion')}
            </button>
          </div>
        )}
      </div>
    </Fold>
  );
}

function CriterionRow({
  id,
  name,
  removed,
}: {
  readonly id: string;
  readonly name: string;
  readonly removed: () => void;
}) {
  const { challenge, say } = useForm();
  const { faults, make, makeInClass } = useMake();
  const measure = `judged:${id}`;
  const asked = isAskedFor(measure, challenge) || keysOf(challenge).some(({ by }) => by === measure);
  return (
    <Row
      name={name}
      kind="named"
      faults={faults}
      remove={
        asked
          ? null
          : () => {
              if (makeInClass(removeCriterion(challenge.id, id))) removed();
            }
      }
    >
      <TextField
        label={say('challenge.criterion-name')}
        value={name}
        empty={say('challenge.text-empty', { kept: name })}
        change={(typed) => make(changeCriterion(id, typed))}
      />
      {asked && <p className="mut chal-asked">{say('challenge.criterion-asked')}</p>}
    </Row>
  );
}
