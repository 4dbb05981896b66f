// All that the bars are made of: how often each solid has what counts, and what it earns.

import { useId } from 'preact/hooks';
import { costText, decimalsOf, earnedFor, rounded } from './earned.ts';
import type { Cost } from './lab.ts';
import { rowText, useLab } from './lab.ts';

export function CountsTable() {
  const lab = useLab();
  const { say, kit, words } = lab;
  const id = useId();
  const costs = (['piece', 'paper', 'minutes'] as const satisfies readonly Cost[]).flatMap((cost) => {
    const earned = earnedFor(cost, lab);
    return earned === null ? [] : [{ cost, earned, decimals: decimalsOf(earned.values) }];
  });
  return (
    <details className="fair-fold">
      <summary id={id}>{say('lab.table')}</summary>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table is scrolled with the keys too */}
      <section className="fair-scrolls" data-scrolls tabIndex={0} aria-labelledby={id}>
        <table>
          <thead>
            <tr>
              <th scope="col">{say('lab.solid')}</th>
              {kit.rows.map((row) => (
                <th key={row.id} scope="col" className="r">
                  {rowText(row, lab)}
                </th>
              ))}
              {costs.map(({ cost }) => (
                <th key={cost} scope="col" className="r">
                  {`${say('lab.for')} ${costText(cost, lab)}`}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {kit.kinds.map(({ id: kind, name }, k) => (
              <tr key={kind}>
                <th scope="row">{name}</th>
                {kit.rows.map((row, j) => (
                  <td key={row.id} className="r">
                    {words.number(kit.data.kinds[k]?.measures[j] ?? 0)}
                  </td>
                ))}
                {costs.map(({ cost, earned, decimals }) => {
                  const value = earned.values[k] ?? null;
                  return (
                    <td key={cost} className="r">
                      {value === null ? say('lab.not-known') : words.number(rounded(value), decimals)}
                    </td>
                  );
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </details>
  );
}
