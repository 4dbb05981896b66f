// Group, total, what changed since the last try, and the place.

import type { Report } from '@cairnmark/engine';
import type { Standing } from '@cairnmark/scoring';
import { useCard } from './card.ts';
import type { SinceLastTry } from './last-try.ts';
import { sinceLastTry } from './last-try.ts';
import { countingTry } from './tries.ts';

export function Head({ standing }: { readonly standing: Standing | null }) {
  const { at, number, say, bill, words, inClass } = useCard();
  const { total } = bill;
  const fallen = inClass.fallen(at.attempt.state, at.challenge.fallen);
  return (
    <div className="card-head">
      <p className="mut">{say('score-card.which', { challenge: at.challenge.name, number })}</p>
      <h1>{at.group.name}</h1>
      <p className="card-total" aria-live="polite">
        {total === null ? '–' : words.fixed(total, bill.decimals)}
        <span className="vh"> {say(total === null ? 'score-card.no-total' : 'score-card.points')}</span>
      </p>
      <Since />
      {fallen !== null && <p>{fallen}</p>}
      {isOut(at.attempt.state) && <p>{say('score-card.absent-what')}</p>}
      {standing !== null && <Place standing={standing} />}
      <Seen />
    </div>
  );
}

const isOut = ({ kind }: Report['state']): boolean => kind === 'absent' || kind === 'not-taking-part';

function Since() {
  const { at, report, reports, bill, words, inClass, say } = useCard();
  const since = sinceLastTry(report, reports, at.tries, at.challenge);
  const unit = say(
    bill.total === null ? 'score-card.no-total' : Math.abs(bill.total) === 1 ? 'score-card.point' : 'score-card.points',
  );
  if (since === null) return <p className="mut">{unit}</p>;
  const shown = since.changes.filter(({ fact }) => !fact.startsWith('kind:'));
  return (
    <>
      <p className="mut">
        {since.more === null
          ? unit
          : `${unit}, ${comparison(since, words.fixed(Math.abs(since.more), bill.decimals), say)}`}
      </p>
      <details className="card-since">
        <summary>{say('score-card.what-changed', { number: since.number })}</summary>
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

/** The place is that of the try that counts, which may be another one. */
function Place({ standing }: { readonly standing: Standing }) {
  const { at, reports, inClass, say } = useCard();
  const { place, out } = standing;
  const counting = reports === null ? null : countingTry(reports, at.challenge, at.group);
  const other = counting !== null && counting.attempt !== at.attempt.id;
  const told =
    place === null
      ? out === null || out.code === 'not-confirmed' || out.code === at.attempt.state.kind
        ? null
        : inClass.out(out, counting, at.challenge.requirements)
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
