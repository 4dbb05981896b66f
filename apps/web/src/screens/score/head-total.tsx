// The large number of the card: points or the value that decides, against the try before, and what changed since.

import { unmeasuredLosses } from '@cairnmark/engine';
import { CardHelp } from '../../app/card-help.tsx';
import { useCard } from './card.ts';
import { headlineFact } from './headline.ts';
import type { SinceLastTry } from './last-try.ts';
import { sinceLastTry } from './last-try.ts';
import { apartText, pointsUnit } from './points-text.ts';

export function Headline() {
  const { at, report, bill, words, inClass, say, covering } = useCard();
  const fact = headlineFact(report, at.challenge);
  if (covering.totalCovered || (fact !== null && covering.covered.has(fact.id))) return <CoveredTotal />;
  if (fact !== null && fact.value !== null) {
    return (
      <>
        <p className="card-total card-of-measure">{inClass.amount(fact.id, fact.value, fact.tolerance)}</p>
        <p className="mut">{inClass.label(fact.id)}</p>
      </>
    );
  }
  const { total } = bill;
  return (
    <>
      <p className="card-total" aria-live="polite">
        {total === null ? '–' : words.number(total, bill.decimals)}
        <span className="vh"> {say(pointsUnit(total))}</span>
      </p>
      <Since />
      <NotKnown />
    </>
  );
}

function CoveredTotal() {
  const { say } = useCard();
  return (
    <>
      <p className="card-total" aria-hidden="true">
        ?
      </p>
      <p className="mut">{say('ours-first.total')}</p>
    </>
  );
}

/** Points may be lost by what nobody measured yet. */
function NotKnown() {
  const { at, report, inClass, words, say } = useCard();
  const measures = unmeasuredLosses(report, at.challenge).map((measure) => inClass.label(measure));
  return measures.length === 0 ? null : <p>{say('score-card.not-known', { measures: words.listed(measures) })}</p>;
}

/** In points, against the try before. */
function Since() {
  const { at, report, reports, bill, words, say } = useCard();
  const since = sinceLastTry(report, reports, at.tries, at.challenge);
  const unit = say(pointsUnit(bill.total));
  if (since === null) return <p className="mut">{unit}</p>;
  return (
    <p className="mut">
      {since.more === null ? unit : `${unit}, ${comparison(since, apartText(since.more, bill.decimals, words), say)}`}
    </p>
  );
}

/** In facts, against the try before. */
export function Changed() {
  const { at, report, reports, inClass, say, covering } = useCard();
  const since = sinceLastTry(report, reports, at.tries, at.challenge);
  if (since === null) return null;
  const shown = since.changes.filter(({ fact }) => !fact.startsWith('kind:') && !covering.covered.has(fact));
  const title = say('score-card.what-changed', { number: since.number });
  return (
    <>
      <CardHelp items={[['help.since', title]]} />
      <details className="card-since">
        <summary>{title}</summary>
        <ul className="card-told">
          {shown.length === 0 && <li>{say('score-card.nothing-changed')}</li>}
          {shown.map((change) => (
            <li key={change.fact}>{inClass.change(change)}</li>
          ))}
        </ul>
      </details>
    </>
  );
}

function comparison({ more, number }: SinceLastTry, points: string, say: ReturnType<typeof useCard>['say']): string {
  if (more === null || more === 0) return say('score-card.level', { number });
  return say(more > 0 ? 'score-card.more' : 'score-card.fewer', { points, number });
}
