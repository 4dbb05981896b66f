// The card on one sheet of paper: what the screen shows, without its controls, with a line to sign on.

import { decisionsMade } from '@cairnmark/engine';
import type { Standing } from '@cairnmark/scoring';
import { nowWithZone } from '../../store/clock.ts';
import { useCard } from './card.ts';
import { headlineFact } from './headline.ts';
import { pointsUnit } from './points-text.ts';
import './print.css';
import { useMoments } from '../../parts/use-moments.ts';
import { PrintLines } from './print-lines.tsx';
import { useTold } from './stands.tsx';
import { countingTry } from './tries.ts';

export function PrintCard({ standing }: { readonly standing: Standing | null }) {
  const { at, number, report, reports, bill, inClass, words, say } = useCard();
  const moment = useMoments();
  const tolerance = (measure: string | null): number => report.facts.find(({ id }) => id === measure)?.tolerance ?? 0;
  const told = useTold();
  const fallen = inClass.fallen(at.attempt.state, at.challenge.fallen);
  const place =
    standing === null || standing.place === null
      ? ''
      : [say('score-card.place', { place: standing.place }), ...inClass.placeNotes(standing)].join(', ');
  const headline = headlineFact(report, at.challenge);
  const large =
    headline !== null && headline.value !== null
      ? inClass.amount(headline.id, headline.value, headline.tolerance)
      : bill.total === null
        ? '–'
        : words.number(bill.total, bill.decimals);
  const below = headline === null ? say(pointsUnit(bill.total)) : words.capital(inClass.label(headline.id));
  const counting = reports === null ? null : countingTry(reports, at.challenge, at.group);
  const counts =
    counting === null || counting.attempt === at.attempt.id
      ? ''
      : say('score-card.place-counts', { number: at.tries.findIndex(({ id }) => id === counting.attempt) + 1 }).replace(
          /\.$/,
          '',
        );
  const { kind } = at.attempt.state;
  const out = kind === 'absent' || kind === 'not-taking-part';
  return (
    <article className="print-card">
      <header>
        <div>
          <p>{say('score-card.which', { challenge: at.challenge.name, number })}</p>
          <h1>{at.group.name}</h1>
          <p>{moment(at.attempt.at)}</p>
        </div>
        <div className="print-total">
          <b className={headline === null ? undefined : 'print-of-measure'}>{large}</b>
          <p>{[below, place, counts].filter((text) => text !== '').join('. ')}</p>
        </div>
      </header>
      {fallen !== null && <p>{fallen}</p>}
      {out && (
        <p>
          {say(`score-card.state-${kind}`)}. {say('score-card.absent-what')}
        </p>
      )}
      {!out && at.attempt.confirmedBy === null && <p>{say('score-card.provisional')}</p>}
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
