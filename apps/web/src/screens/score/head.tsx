// Group, total, what changed since the last try, and the place.

import type { Report } from '@cairnmark/engine';
import { unmeasuredLosses } from '@cairnmark/engine';
import type { Standing } from '@cairnmark/scoring';
import type { Card } from './card.ts';
import { useCard } from './card.ts';
import { headlineFact } from './headline.ts';
import type { SinceLastTry } from './last-try.ts';
import { sinceLastTry } from './last-try.ts';
import { countingTry } from './tries.ts';

export function Head({ standing }: { readonly standing: Standing | null }) {
  const { at, number, say, inClass } = useCard();
  const fallen = inClass.fallen(at.attempt.state, at.challenge.fallen);
  return (
    <div className="card-head">
      <p className="mut">{say('score-card.which', { challenge: at.challenge.name, number })}</p>
      <h1>{at.group.name}</h1>
      <Headline />
      {fallen !== null && <p>{fallen}</p>}
      {isOut(at.attempt.state) && (
        <p>
          <b>{say(`score-card.state-${at.attempt.state.kind}`)}.</b> {say('score-card.absent-what')}
        </p>
      )}
      {standing !== null && <Place standing={standing} />}
      <Seen />
      <Changed />
    </div>
  );
}

const isOut = ({ kind }: Report['state']): boolean => kind === 'absent' || kind === 'not-taking-part';

function Headline() {
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
        <span className="vh"> {say(total === null ? 'score-card.no-total' : 'score-card.points')}</span>
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
  const unit = say(
    bill.total === null ? 'score-card.no-total' : Math.abs(bill.total) === 1 ? 'score-card.point' : 'score-card.points',
  );
  if (since === null) return <p className="mut">{unit}</p>;
  return (
    <p className="mut">
      {since.more === null
        ? unit
        : `${unit}, ${comparison(since, words.number(Math.abs(since.more), bill.decimals), say)}`}
    </p>
  );
}

/** In facts, against the try before. */
function Changed() {
  const { at, report, reports, inClass, say, covering } = useCard();
  const since = sinceLastTry(report, reports, at.tries, at.challenge);
  if (since === null) return null;
  const shown = since.changes.filter(({ fact }) => !fact.startsWith('kind:') && !covering.covered.has(fact));
  return (
    <details className="card-since">
      <summary>{say('score-card.what-changed', { number: since.number })}</summary>
      <ul className="card-told">
        {shown.length === 0 && <li>{say('score-card.nothing-changed')}</li>}
        {shown.map((change) => (
          <li key={change.fact}>{inClass.change(change)}</li>
        ))}
      </ul>
    </details>
  );
}

function comparison({ more, number }: SinceLastTry, points: string, say: ReturnType<typeof useCard>['say']): string {
  if (more === null || more === 0) return say('score-card.level', { number });
  return say(more > 0 ? 'score-card.more' : 'score-card.fewer', { points, number });
}

/** The place is that of the try that counts, which may be another one. */
function Place({ standing }: { readonly standing: Standing }) {
  const card = useCard();
  const { at, reports, inClass, say } = card;
  const { place } = standing;
  const counting = reports === null ? null : countingTry(reports, at.challenge, at.group);
  const other = counting !== null && counting.attempt !== at.attempt.id;
  const told =
    place === null
      ? whyNone(standing, counting, card)
      : [say('score-card.place', { place }), ...inClass.placeNotes(standing)].join(', ');
  return (
    <>
      {told !== null && <p className="card-place">{told}</p>}
      {other && (
        <p>{say('score-card.place-counts', { number: at.tries.findIndex(({ id }) => id === counting.attempt) + 1 })}</p>
      )}
    </>
  );
}

/** null: it is said elsewhere on the card. */
function whyNone({ out }: Standing, counting: Report | null, { at, inClass, say }: Card): string | null {
  const told = out.filter(({ code }) => code !== 'not-confirmed' && code !== at.attempt.state.kind);
  if (told.length === 0) return null;
  if (told.some(({ code }) => code === 'no-attempt')) return say('score-card.none-chosen');
  return inClass.out(told, counting, at.challenge.requirements);
}

function Seen() {
  const { at, say } = useCard();
  const { confirmedBy, state } = at.attempt;
  if (isOut(state)) return null;
  if (confirmedBy !== null) return <p className="mut">{say('score-card.seen-by', { who: confirmedBy })}</p>;
  return (
    <p className="card-provisional" role="status">
      {say('score-card.provisional')}
    </p>
  );
}
