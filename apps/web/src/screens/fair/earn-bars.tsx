// Who earns what: a bar for each solid, in the order of the kit, so that nothing jumps while points change. A table: every row
// has its name and its number.

import type { Earned } from '@cairnmark/scoring';
import { useMemo } from 'preact/hooks';
import { colourToken, familyOf } from '../../drawing/family.ts';
import { kitScale } from '../../drawing/kit-scale.ts';
import { Choice } from '../../parts/choice.tsx';
import { SolidPicture } from '../../parts/solid-picture.tsx';
import { barSpan } from './bar-span.ts';
import { CountsTable } from './counts-table.tsx';
import { costText, decimalsOf, earnedFor, rounded } from './earned.ts';
import { Favoured } from './favoured.tsx';
import type { Cost } from './lab.ts';
import { useLab } from './lab.ts';
import { MinutesFold } from './minutes-fold.tsx';

const COSTS = ['piece', 'paper', 'minutes'] as const satisfies readonly Cost[];

export function EarnBars() {
  const lab = useLab();
  const { say, cost, holdAgainst } = lab;
  const earned = earnedFor(cost, lab);
  return (
    <section className="fair-earns" aria-labelledby="fair-earns">
      <div className="fair-head">
        <h2 id="fair-earns">{say('lab.earns')}</h2>
        <Choice
          label={say('lab.for')}
          options={COSTS.map((id) => ({ id, text: costText(id, lab) }))}
          chosen={cost}
          choose={holdAgainst}
        />
      </div>
      {earned === null ? (
        <p className="note">{say('lab.minutes-none')}</p>
      ) : (
        <>
          <Bars earned={earned} />
          <Favoured earned={earned} />
        </>
      )}
      <CountsTable />
      <MinutesFold />
    </section>
  );
}

function Bars({ earned }: { readonly earned: Earned }) {
  const { say, kit } = useLab();
  const scale = useMemo(() => kitScale(kit.solids.values()), [kit.solids]);
  const decimals = decimalsOf(earned.values);
  return (
    <table className="fair-bars">
      <thead className="vh">
        <tr>
          <th scope="col">{say('lab.solid')}</th>
          <th scope="col">{say('lab.earned')}</th>
        </tr>
      </thead>
      <tbody>
        {kit.kinds.map(({ id, name }, k) => {
          const solid = kit.solids.get(id);
          const value = earned.values[k] ?? null;
          return (
            <tr key={id} data-kind={id}>
              <th scope="row">
                {solid !== undefined && <SolidPicture solid={solid} scale={scale} />}
                <span>{name}</span>
              </th>
              <td>
                {solid !== undefined && (
                  <span className="fair-track" aria-hidden="true">
                    <span
                      className="fair-bar"
                      style={{ ...barSpan(value, earned.values), '--c': `var(${colourToken(familyOf(solid.id))})` }}
                    />
                  </span>
                )}
                <Earns
                  value={value}
                  decimals={decimals}
                  isMost={value !== null && value > 0 && earned.favourites.includes(id)}
                />
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

function Earns({
  value,
  decimals,
  isMost,
}: {
  readonly value: number | null;
  readonly decimals: number;
  readonly isMost: boolean;
}) {
  const { say, words } = useLab();
  if (value === null) return <span className="mut">{say('lab.not-known')}</span>;
  const text = words.number(rounded(value), decimals);
  return <span className={isMost ? 'fair-number fair-most' : 'fair-number'}>{text}</span>;
}
