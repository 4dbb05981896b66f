// Group, total, what changed since the last try, and the place.

import type { Report } from '@cairnmark/engine';
import type { Standing } from '@cairnmark/scoring';
import type { Card } from './card.ts';
import { useCard } from './card.ts';
import { Changed, Headline } from './head-total.tsx';
import { NearBestLine } from './near-best-line.tsx';
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
      <FallsByTheSums />
      {isOut(at.attempt.state) && (
        <p>
          <b>{say(`score-card.state-${at.attempt.state.kind}`)}.</b> {say('score-card.absent-what')}
        </p>
      )}
      {standing !== null && <Place standing={standing} />}
      <Seen />
      <NearBestLine />
      <Changed />
    </div>
  );
}

/** Before anybody has seen the real build, points for a tower that cannot stand would please too soon. */
function FallsByTheSums() {
  const { at, report, say } = useCard();
  const foreseen = at.attempt.confirmedBy === null && at.attempt.state.kind === 'stood';
  if (!foreseen || report.stability?.verdict !== 'falls') return null;
  const counts = at.challenge.fallen.counts === 'as-measured' ? 'falls-by-the-sums' : 'falls-and-then';
  return <p className="card-provisional">{say(`score-card.${counts}`)}</p>;
}

const isOut = ({ kind }: Report['state']): boolean => kind === 'absent' || kind === 'not-taking-part';

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
