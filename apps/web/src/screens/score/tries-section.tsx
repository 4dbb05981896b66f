// All tries of the group at the challenge, with what they brought, and which of them counts.

import { CardHelp } from '../../app/card-help.tsx';
import { useMay } from '../../app/use-may.ts';
import { useMoments } from '../../parts/use-moments.ts';
import { chooseAttempt } from '../../store/class-changes.ts';
import { useSession } from '../../store/use-session.ts';
import { useCard } from './card.ts';
import type { TryRow } from './tries.ts';
import { tryRows } from './tries.ts';

export function Tries() {
  const { at, reports, placing, say } = useCard();
  return (
    <section className="sec card-tries" aria-busy={placing}>
      <h2>{say('score-card.tries')}</h2>
      <p className="mut">{say(`score-card.counts-${at.challenge.attemptCounts}`)}</p>
      <CardHelp items={[['help.tries', say('score-card.tries')]]} />
      <ul className="card-ruled">
        {tryRows(at.tries, reports, at.challenge, at.group).map((row) => (
          <Try key={row.attempt.id} row={row} />
        ))}
      </ul>
    </section>
  );
}

function Try({ row: { attempt, number, total, counts } }: { readonly row: TryRow }) {
  const { at, reports, placing, words, say, covering } = useCard();
  const goTo = useSession((session) => session.goTo);
  const change = useSession((session) => session.change);
  const moment = useMoments();
  const mayDecide = useMay('decide');
  const shown = attempt.id === at.attempt.id;
  const { kind } = attempt.state;
  const notes = [
    ...(kind === 'stood' ? [] : [say(`score-card.state-${kind}`)]),
    ...(attempt.confirmedBy === null && kind !== 'absent' && kind !== 'not-taking-part'
      ? [say('score-card.try-provisional')]
      : []),
    ...(shown ? [say('score-card.try-shown')] : []),
  ];
  return (
    <li className={shown ? 'card-try card-shown' : 'card-try'}>
      <span>
        <b>{say('score-card.try', { number })}</b> <span className="mut">{moment(attempt.at)}</span>
        {notes.length > 0 && <small className="mut">{notes.join(', ')}</small>}
      </span>
      <span className="card-try-total">
        <b>
          {reports === null && placing
            ? '…'
            : shown && covering.totalCovered
              ? '?'
              : total === null
                ? say('score-card.no-total')
                : words.counted('points', total)}
        </b>
        {counts && <small className="card-counts">{say('score-card.try-counts')}</small>}
      </span>
      <span className="card-try-buttons">
        {!shown && (
          <button type="button" className="btn" onClick={() => goTo({ attempt: attempt.id })}>
            {say('score-card.show-try', { number })}
          </button>
        )}
        {mayDecide && at.challenge.attemptCounts === 'chosen' && (
          <button
            type="button"
            className="btn"
            aria-pressed={attempt.chosen}
            onClick={() => change(chooseAttempt(attempt))}
          >
            {say('score-card.choose-try', { number })}
          </button>
        )}
      </span>
    </li>
  );
}
