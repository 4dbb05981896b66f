// What points are looked for: favouring a solid or even, by how much, and what may count.

import { NumberField } from '../../parts/number-field.tsx';
import { rowText, useLab } from './lab.ts';
import type { Wish } from './task.ts';

export function WishForm({ wish, change }: { readonly wish: Wish; readonly change: (part: Partial<Wish>) => void }) {
  const lab = useLab();
  const { say, kit, ruler } = lab;
  const number = (key: 'lead' | 'most', most: number) => (
    <NumberField
      label={say(`lab.${key}`)}
      value={wish[key]}
      unit="count"
      least={1}
      most={most}
      whole
      ruler={ruler}
      change={(value) => change({ [key]: value })}
    />
  );
  return (
    <>
      <fieldset className="fair-what">
        <legend className="vh">{say('lab.what')}</legend>
        {(['favour', 'even'] as const).map((what) => (
          <label key={what} className="fair-tick">
            <input type="radio" name="fair-what" checked={wish.what === what} onChange={() => change({ what })} />
            <span>{say(what === 'favour' ? 'lab.favour-one' : 'lab.most-even')}</span>
          </label>
        ))}
      </fieldset>
      {wish.what === 'favour' && (
        <div className="field">
          <label htmlFor="fair-which">{say('lab.which')}</label>
          <select
            id="fair-which"
            className="in"
            value={wish.favourite}
            onChange={({ currentTarget }) => change({ favourite: currentTarget.value })}
          >
            {kit.kinds.map(({ id, name }) => (
              <option key={id} value={id}>
                {name}
              </option>
            ))}
          </select>
        </div>
      )}
      <div className="fair-two">
        {wish.what === 'favour' && number('lead', LEAD_MOST)}
        {number('most', RATE_MOST)}
      </div>
      <fieldset className="fair-what fair-two">
        <legend className="lab">{say('lab.rows')}</legend>
        {kit.rows.map((row) => (
          <Tick
            key={row.id}
            text={rowText(row, lab)}
            on={wish.rows.includes(row.id)}
            turn={(on) => change({ rows: on ? [...wish.rows, row.id] : wish.rows.filter((id) => id !== row.id) })}
          />
        ))}
      </fieldset>
      <div>
        <Tick text={say('lab.negative')} on={wish.negative} turn={(negative) => change({ negative })} />
        <Tick text={say('lab.half')} on={wish.half} turn={(half) => change({ half })} />
      </div>
    </>
  );
}

const LEAD_MOST = 1000;
const RATE_MOST = 100;

const Tick = ({
  text,
  on,
  turn,
}: {
  readonly text: string;
  readonly on: boolean;
  readonly turn: (on: boolean) => void;
}) => (
  <label className="fair-tick">
    <input type="checkbox" checked={on} onChange={({ currentTarget }) => turn(currentTarget.checked)} />
    <span>{text}</span>
  </label>
);
