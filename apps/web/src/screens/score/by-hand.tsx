// What persons decided of this try, with reasons and times; a decision taken back stays in sight. Points by hand.

import type { DecisionMade } from '@cairnmark/engine';
import { decisionsMade } from '@cairnmark/engine';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { CardHelp } from '../../app/card-help.tsx';
import { useMay } from '../../app/use-may.ts';
import { useMoments } from '../../parts/use-moments.ts';
import { withDecisionTakenBack } from '../../store/class-changes.ts';
import { nowWithZone } from '../../store/clock.ts';
import { asReason } from '../../store/plain-text.ts';
import { useSession } from '../../store/use-session.ts';
import { useCard } from './card.ts';
import { GivePoints } from './give-points.tsx';
import { ReasonField } from './reason-field.tsx';

export function ByHand() {
  const { at, inClass, say } = useCard();
  const { decisions, adjustments } = at.attempt;
  const moment = useMoments();
  const mayDecide = useMay('decide');
  return (
    <section className="sec card-by-hand">
      <h2>{say('score-card.by-hand')}</h2>
      {decisions.length + adjustments.length === 0 && <p className="mut">{say('score-card.no-by-hand')}</p>}
      <ul className="card-ruled">
        {decisionsMade(decisions).map((made) => (
          <Decided key={`${made.decision.at} ${made.decision.measure} ${made.decision.value}`} made={made} />
        ))}
        {adjustments.map((adjustment) => (
          <li key={`${adjustment.at} ${adjustment.reason}`}>
            {say('score-card.decided-at', { sentence: inClass.adjustment(adjustment), when: moment(adjustment.at) })}
          </li>
        ))}
      </ul>
      {mayDecide && (
        <>
          <CardHelp
            items={[
              ['help.take-back', say('score-card.take-back')],
              ['help.give', say('score-card.give')],
            ]}
          />
          <GivePoints />
        </>
      )}
    </section>
  );
}

function Decided({ made }: { readonly made: DecisionMade }) {
  const { decision } = made;
  const { report, inClass, words, say } = useCard();
  const changeTry = useSession((session) => session.changeTry);
  const moment = useMoments();
  const mayDecide = useMay('decide');
  const [asking, setAsking] = useState(false);
  const [missing, setMissing] = useState(false);
  const [reason, setReason] = useState('');
  const row = useRef<HTMLLIElement>(null);
  useLayoutEffect(() => {
    if (asking) row.current?.querySelector('input')?.focus();
  }, [asking]);
  const fact = report.facts.find(({ id }) => id === decision.measure) ?? null;
  const sentence = words.capital(inClass.decision(made, fact));
  const when = moment(decision.at);
  const { takenBack } = decision;
  if (takenBack !== undefined) {
    return (
      <li className="mut" ref={row} tabIndex={-1}>
        {say('score-card.taken-back-at', { sentence, when, back: moment(takenBack.at) })}
      </li>
    );
  }
  const takeBack = (): void => {
    const why = asReason(reason);
    setMissing(why === '');
    if (why === '') return;
    changeTry(withDecisionTakenBack(decision, { at: nowWithZone(), reason: why }));
    row.current?.focus();
  };
  return (
    <li ref={row} tabIndex={-1}>
      {say('score-card.decided-at', { sentence, when })}
      {mayDecide && (
        <span className="card-form-row">
          {asking && <ReasonField value={reason} change={setReason} />}
          <button type="button" className="btn" onClick={asking ? takeBack : () => setAsking(true)}>
            {say('score-card.take-back')}
            <span className="vh">: {inClass.label(decision.measure)}</span>
          </button>
        </span>
      )}
      <span role="status" className="oops">
        {missing ? say('score-card.take-back-missing') : ''}
      </span>
    </li>
  );
}
