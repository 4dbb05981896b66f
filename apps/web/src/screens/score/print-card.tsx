// The card on one sheet of paper: what the screen shows, without its controls, with a line to sign on.

import { decisionsMade } from '@cairnmark/engine';
import type { Standing } from '@cairnmark/scoring';
import { nowWithZone } from '../../store/clock.ts';
import { useCard } from './card.ts';
import './print.css';
import { PrintLines } from './print-lines.tsx';
import { useTold } from './stands.tsx';
import { useMoments } from './use-moments.ts';

export function PrintCard({ standing }: { readonly standing: Standing | null }) {
  const { at, number, report, bill, inClass, words, say } = useCard();
  const moment = useMoments();
  const tolerance = (measure: string | null): number => report.facts.find(({ id }) => id === measure)?.tolerance ?? 0;
  const told = useTold();
  const fallen = inClass.fallen(at.attempt.state, at.challenge.fallen);
  const place =
    standing === null || standing.place === null
      ? ''
      : [say('score-card.place', { place: standing.place }), ...inClass.placeNotes(standing)].join(', ');
  return (
    <article className="print-card">
      <header>
        <div>
          <p>{say('score-card.which', { challenge: at.challenge.name, number })}</p>
          <h1>{at.group.name}</h1>
          <p>{moment(at.attempt.at)}</p>
        </div>
        <div className="print-total">
          <b>{bill.total === null ? '–' : words.number(bill.total, bill.decimals)}</b>
          <p>
            {[say(bill.total === null ? 'score-card.no-total' : 'score-card.points'), place]
              .filter((text) => text !== '')
              .join('. ')}
          </p>
        </div>
      </header>
      {fallen !== null && <p>{fallen}</p>}
      {at.record.invented && <p>{say('frame.invented')}</p>}
      <PrintLines />
      <h2>{say('score-card.rules')}</h2>
      <ul>
        {at.challenge.requirements.map((rule) => {
          const line = report.requirements.find(({ requirement }) => requirement === rule.id);
          return line === undefined ? null : <li key={rule.id}>{inClass.rule(line, rule, tolerance(line.measure))}</li>;
        })}
        {report.stockBreaches.map((breach) => (
          <li key={breach.kind}>{inClass.stock(breach)}</li>
        ))}
      </ul>
      {told !== null && (
        <>
          <h2>{say('score-card.stands')}</h2>
          <p>{told.verdict}</p>
          <p className="small">{told.limits.join(' ')}</p>
        </>
      )}
      {at.attempt.decisions.length + at.attempt.adjustments.length > 0 && (
        <>
          <h2>{say('score-card.by-hand')}</h2>
          <ul>
            {decisionsMade(at.attempt.decisions).map((made) => (
              <li key={`${made.decision.at} ${made.decision.value}`}>
                {words.capital(
                  inClass.decision(made, report.facts.find(({ id }) => id === made.decision.measure) ?? null),
                )}
              </li>
            ))}
            {at.attempt.adjustments.map((adjustment) => (
              <li key={`${adjustment.at} ${adjustment.reason}`}>{inClass.adjustment(adjustment)}</li>
            ))}
          </ul>
        </>
      )}
      <footer>
        <p className="sign">
          <span>{say('score-card.sign')}</span>
          <span className="sign-line">{at.attempt.confirmedBy ?? ''}</span>
          <span>{say('score-card.sign-date')}</span>
          <span className="sign-line short" />
        </p>
        <p className="small">
          {say('score-card.printed', { when: moment(nowWithZone()), version: report.engineVersion })}
        </p>
      </footer>
    </article>
  );
}
