// All groups at a glance: what each has of every kind, what is lost and what is left. Each row adds up to the stock.

import { useGame } from './game.ts';
import type { GlanceRow } from './glance.ts';
import { allKinds, glance } from './glance.ts';

export function GlanceTable() {
  const { at, say, events } = useGame();
  const groups = at.record.groups;
  const ids = groups.map(({ id }) => id);
  const rows = glance(events, at.challenge, ids);
  const names = [
    ...groups.map(({ name }) => name),
    say('supply-game.glance-lost'),
    say('supply-game.glance-left'),
    say('supply-game.glance-together'),
  ];
  return (
    <details className="supply-fold">
      <summary>{say('supply-game.glance')}</summary>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: many groups are wider than the page; keys scroll to them */}
      <section className="supply-wide" aria-label={say('supply-game.glance')} tabIndex={0}>
        <table className="supply-glance">
          <thead>
            <tr>
              <th scope="col">{say('supply-game.glance-kind')}</th>
              {names.map((name) => (
                <th key={name} scope="col">
                  {name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {at.challenge.kit.kinds.map(({ id, name }, k) => {
              const row = rows[k];
              return row === undefined ? null : <Row key={id} title={name} row={row} names={names} />;
            })}
            <Row title={say('supply-game.glance-all')} row={allKinds(rows, ids)} names={names} last />
          </tbody>
        </table>
      </section>
      <p className="mut">{say('supply-game.glance-sum')}</p>
    </details>
  );
}

const Row = ({
  title,
  row,
  names,
  last = false,
}: {
  readonly title: string;
  readonly row: Omit<GlanceRow, 'kind'>;
  readonly names: readonly string[];
  readonly last?: boolean;
}) => (
  <tr className={last ? 'supply-last' : undefined}>
    <th scope="row">{title}</th>
    {[...row.has, row.lost, row.left, row.together].map((count, k) => (
      <td key={names[k]} data-name={names[k]}>
        {count}
      </td>
    ))}
  </tr>
);
