// Who carries, if the class wants to know: a number or a role, never a name. Remembered until another is chosen.

import { NAME_CHARACTERS_MOST } from '@cairnmark/formats';
import { useState } from 'preact/hooks';
import { Choice } from '../../parts/choice.tsx';
import { LineField } from '../../parts/line-field.tsx';
import { asName } from '../../store/plain-text.ts';
import { useGame } from './game.ts';
import { withCarrier } from './game-memory.ts';

/** Groups of four to six pupils. */
const NUMBERS = ['1', '2', '3', '4', '5', '6'] as const;
type Option = (typeof NUMBERS)[number] | 'none' | 'role';

export function Carrier() {
  const { at, say, list, memory, remember } = useGame();
  const [asking, setAsking] = useState<string | null>(null);
  const { carrier } = list;
  const group = at.group.id;
  const textOf = (number: string): string => say('supply-game.carrier-number', { number });
  const number = NUMBERS.find((one) => textOf(one) === carrier);
  const typing = asking === group || (carrier !== null && number === undefined);
  const choose = (option: Option): void => {
    setAsking(option === 'role' ? group : null);
    const next = option === 'role' || option === 'none' ? null : textOf(option);
    remember(withCarrier(memory, group, next));
  };
  return (
    <section className="supply-carrier">
      <h2 className="lab">{say('supply-game.carrier')}</h2>
      <Choice<Option>
        label={say('supply-game.carrier')}
        hideLabel
        options={[
          { id: 'none', text: say('supply-game.carrier-none') },
          ...NUMBERS.map((id) => ({ id, text: id })),
          { id: 'role', text: say('supply-game.carrier-role') },
        ]}
        chosen={typing ? 'role' : (number ?? 'none')}
        choose={choose}
      />
      {typing && <RoleField key={group} />}
    </section>
  );
}

function RoleField() {
  const { at, say, list, memory, remember } = useGame();
  const [typed, setTyped] = useState(list.carrier ?? '');
  const name = asName(typed);
  return (
    <LineField
      label={say('supply-game.carrier-typed')}
      value={typed}
      most={NAME_CHARACTERS_MOST}
      change={setTyped}
      leave={() => remember(withCarrier(memory, at.group.id, name === '' ? null : name))}
    />
  );
}
