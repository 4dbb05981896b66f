// Why no points favour a solid: the proof in words, the numbers that prove it side by side, and what would help.

import type { Offer, Offers, WhyNot as Why } from '@cairnmark/scoring';
import { labKindName, leadText, timesText, whyNotSentences } from '@cairnmark/words';
import type { Lab } from './lab.ts';
import { rowText, useLab } from './lab.ts';
import type { Wish } from './task.ts';
import { TriedRule } from './tried-rule.tsx';

interface WhyOf {
  readonly wish: Wish;
  readonly why: Why;
  /** Ids of the rows that the search was for. */
  readonly rows: readonly string[];
}

export function WhyNot({ wish, why, offers, rows }: WhyOf & { readonly offers: Offers | null }) {
  const lab = useLab();
  const { say } = lab;
  const solid = labKindName(wish.favourite, lab);
  // Larger points would help, which is told already, or nothing is left that might.
  const hasHelp = why.code === 'lead-out-of-reach' || (wish.negative && rows.length === lab.kit.rows.length);
  return (
    <div className="warnbox fair-why">
      <p>
        <b>{say(why.code === 'lead-out-of-reach' ? 'lab.cannot-so' : 'lab.cannot', { solid })}</b>{' '}
        {whyNotSentences(why, { ...wish, rows }, lab).join(' ')}
      </p>
      <Sides wish={wish} why={why} rows={rows} />
      {offers?.status === 'tried' && (offers.offers.length > 0 || !hasHelp) && <Helps offers={offers.offers} />}
    </div>
  );
}

/** What both have of everything that may count; the larger number in bold. */
function Sides({ wish, why, rows }: WhyOf) {
  const lab = useLab();
  const { say, kit, words } = lab;
  const sides = sidesOf({ wish, why, rows }, lab);
  if (sides === null) return null;
  return (
    <table>
      <thead>
        <tr>
          <th scope="col">{say('lab.what-counts')}</th>
          {sides.map(({ title }) => (
            <th key={title} scope="col" className="r">
              {title}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((id, j) => {
          const row = kit.rows.find((one) => one.id === id);
          const values = sides.map(({ totals }) => totals[j] ?? 0);
          return (
            <tr key={id}>
              <th scope="row">{row === undefined ? id : rowText(row, lab)}</th>
              {sides.map(({ title }, side) => (
                <td key={title} className="r">
                  {(values[side] ?? 0) > Math.min(...values) ? (
                    <b>{words.number(values[side] ?? 0)}</b>
                  ) : (
                    words.number(values[side] ?? 0)
                  )}
                </td>
              ))}
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

interface SideOf {
  readonly title: string;
  readonly totals: readonly number[];
}

function sidesOf({ wish, why, rows }: WhyOf, lab: Lab): readonly SideOf[] | null {
  const { kit } = lab;
  const alone = (kind: string): SideOf => {
    const measures = kit.data.kinds.find(({ id }) => id === kind)?.measures ?? [];
    return {
      title: labKindName(kind, lab),
      totals: rows.map((row) => measures[kit.rows.findIndex(({ id }) => id === row)] ?? 0),
    };
  };
  switch (why.code) {
    case 'twin':
    case 'dominated':
      return [alone(wish.favourite), alone(why.by)];
    case 'mix':
      return [
        { title: timesText(why.times, wish.favourite, lab), totals: why.totalOfFavourite },
        {
          title: why.others.map((other) => timesText(other.times, other.kind, lab)).join(' + '),
          totals: why.totalOfOthers,
        },
      ];
    default:
      return null;
  }
}

function Helps({ offers }: { readonly offers: readonly Offer[] }) {
  const { say } = useLab();
  return (
    <>
      <h3>{say('lab.offers')}</h3>
      {offers.length === 0 ? (
        <p>{say('lab.offer-none')}</p>
      ) : (
        <ul>
          {offers.map((offer) => (
            <li key={`${offer.rows.join()} ${offer.negative}`}>
              <Help offer={offer} />
            </li>
          ))}
        </ul>
      )}
    </>
  );
}

function Help({ offer: { rows, negative, task, rule } }: { readonly offer: Offer }) {
  const lab = useLab();
  const { say, words, kit } = lab;
  const added = words.listed(
    rows.map((id) => {
      const row = kit.rows.find((one) => one.id === id);
      return row === undefined ? id : lab.inClass.label(row.id);
    }),
  );
  const head =
    rows.length === 0
      ? say('lab.offer-negative')
      : say(negative ? 'lab.offer-both' : 'lab.offer-rows', { rows: added });
  return (
    <TriedRule rule={rule} rows={task.data.rows} before={head}>
      {leadText(rule, task.favourite, lab)}
    </TriedRule>
  );
}
