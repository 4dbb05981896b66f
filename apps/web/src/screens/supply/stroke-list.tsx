// All strokes of the group, newest first. One that was taken back is crossed out and stays in sight.

import type { SupplyEvent } from '@cairnmark/scoring';
import { useRef, useState } from 'preact/hooks';
import { whyNotBack, withoutStroke } from '../../store/supply-changes.ts';
import { useGame } from './game.ts';
import { strokeText } from './stroke-text.ts';
import { ToldHere } from './told-here.tsx';

/** More than a group earns in a few minutes are asked for. */
const FIRST = 12;

export function StrokeList() {
  const { at, say, events, supply, inClass } = useGame();
  const [all, setAll] = useState(false);
  const own = events.filter(({ group }) => group === at.group.id).reverse();
  const shown = all ? own : own.slice(0, FIRST);
  return (
    <details className="supply-fold">
      <summary>{say('supply-game.strokes', { group: at.group.name })}</summary>
      <div className="supply-sums">
        {inClass.supply(supply).map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </div>
      {own.length === 0 && <p className="mut">{say('supply-game.no-strokes')}</p>}
      <ol className="supply-strokes">
        {shown.map((event) => (
          <Stroke key={event.id} event={event} />
        ))}
      </ol>
      {shown.length < own.length && (
        <button type="button" className="btn" onClick={() => setAll(true)}>
          {say('supply-game.all-strokes', { count: own.length })}
        </button>
      )}
    </details>
  );
}

function Stroke({ event }: { readonly event: SupplyEvent }) {
  const game = useGame();
  const { at, say, events, inCharge, closed, make } = game;
  const row = useRef<HTMLLIElement>(null);
  const text = strokeText(event, game);
  const { kind } = event.what;
  // After the end a group may give a piece back that it counted by mistake, and get none.
  const theirs = inCharge || (kind !== 'penalty' && kind !== 'returned' && !(closed && kind === 'lost'));
  const takeBack = (): void => {
    const code = whyNotBack(events, event.id, at.challenge)?.code;
    const whyNot = say(code === 'stock-exceeded' ? 'supply-game.not-back-returned' : 'supply-game.not-back-gone');
    if (make(event.id, withoutStroke(at.challenge.id, event.id), whyNot)) row.current?.focus();
  };
  return (
    <li ref={row} tabIndex={-1}>
      {event.takenBack === true ? (
        <span className="mut">
          <s>{text}</s> {say('supply-game.taken-back')}
        </span>
      ) : (
        <>
          <span>{text}</span>
          {theirs && (
            <button type="button" className="btn" onClick={takeBack}>
              {say('supply-game.take-back')}
              <span className="vh">: {text}</span>
            </button>
          )}
        </>
      )}
      <ToldHere place={event.id} />
    </li>
  );
}
