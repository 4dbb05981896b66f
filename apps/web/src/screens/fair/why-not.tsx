// Why no points favour a solid: the proof in words, the numbers that prove it side by side, and what would help.

import type { Offer, Offers, WhyNot as Why } from '@cairnmark/scoring';
import type { Lab } from './lab.ts';
import { kindName, rowText, ruleText, useLab } from './lab.ts';
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
  const solid = kindName(wish.favourite, lab);
  // Larger points would help, which is told already, or nothing is left that might.
  const hasHelp = why.code === 'lead-out-of-reach' || (wish.negative && rows.length === lab.kit.rows.length);
  return (
    <div className="warnbox fair-why">
      <p>
        <b>{say(why.code === 'lead-out-of-reach' ? 'lab.cannot-so' : 'lab.cannot', { solid })}</b>{' '}
        {whyTexts({ wish, why, rows }, lab).join(' ')}
      </p>
      <Sides wish={wish} why={why} rows={rows} />
      {offers?.status === 'tried' && (offers.offers.length > 0 || !hasHelp) && <Helps offers={offers.offers} />}
    </div>
  );
}

function whyTexts({ wish, why, rows }: WhyOf, lab: Lab): readonly string[] {
  const { say, words } = lab;
  const solid = kindName(wish.favourite, lab);
  switch (why.code) {
    case 'zero':
      return [say('lab.why-zero')];
    case 'twin':
    case 'dominated':
      return [say(`lab.why-${why.code}`, { other: kindName(why.by, lab) })];
    case 'mix': {
      const sides = {
        solid,
        these: times(why.times, wish.favourite, lab),
        those: words.listed(why.others.map((other) => times(other.times, other.kind, lab))),
      };
      return [say(wish.negative ? 'lab.why-mix-exact' : 'lab.why-mix', sides)];
    }
    case 'lead-out-of-reach': {
      const { greatestLead, atGreatest, maxNeeded, atNeeded } = why;
      const most = words.counted('points', wish.most);
      return [
        atGreatest === null
          ? say('lab.why-lead-never', { most, solid })
          : say('lab.why-lead', {
              most,
              solid,
              lead: words.counted('points', greatestLead),
              rule: rowsText(rows, atGreatest.rates, lab),
            }),
        ...(maxNeeded === null || atNeeded === null
          ? []
          : [
              say('lab.why-needed', {
                most: words.counted('points', maxNeeded),
                rule: rowsText(rows, atNeeded.rates, lab),
              }),
            ]),
      ];
    }
  }
}

const times = (count: number, kind: string, lab: Lab): string =>
  lab.say('lab.times', { count, solid: kindName(kind, lab) });

function rowsText(rows: readonly string[], rates: readonly number[], lab: Lab): string {
  const { kit } = lab;
  return ruleText(
    kit.rows,
    kit.rows.map(({ id }) => rates[rows.indexOf(id)] ?? 0),
    lab,
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
      title: kindName(kind, lab),
      totals: rows.map((row) => measures[kit.rows.findIndex(({ id }) => id === row)] ?? 0),
    };
  };
  switch (why.code) {
    case 'twin':
    case 'dominated':
      return [alone(wish.favourite), alone(why.by)];
    case 'mix':
      return [
        { title: times(why.times, wish.favourite, lab), totals: why.totalOfFavourite },
        {
          title: why.others.map((other) => times(other.times, other.kind, lab)).join(' + '),
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
  const solid = kindName(task.favourite, lab);
  const place = kit.kinds.findIndex(({ id }) => id === task.favourite);
  const head =
    rows.length === 0
      ? say('lab.offer-negative')
      : say(negative ? 'lab.offer-both' : 'lab.offer-rows', { rows: added });
  return (
    <TriedRule rule={rule} rows={task.data.rows} before={head}>
      {say('lab.rule-lead', {
        solid,
        points: words.counted('points', rule.scores[place] ?? 0),
        lead: words.number(rule.lead),
      })}
    </TriedRule>
  );
}
