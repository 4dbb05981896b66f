// What happens besides: pieces dropped on the way, lost, brought back to the class, and penalties. Fewer takes back the last
// stroke; more opens what is to be told of the next one.

import { useState } from 'preact/hooks';
import type { What } from '../../store/supply-changes.ts';
import { withOneLess } from '../../store/supply-changes.ts';
import { useGame } from './game.ts';
import { GivePenalty } from './give-penalty.tsx';
import { PickPiece } from './pick-piece.tsx';
import { Stepper } from './stepper.tsx';
import { Tally } from './tally.tsx';
import { ToldHere } from './told-here.tsx';

export type Besides = Exclude<What['kind'], 'earned'>;

const OF_ALL: readonly Besides[] = ['dropped', 'lost'];
const IN_CHARGE: readonly Besides[] = [...OF_ALL, 'returned', 'penalty'];

export function Happened() {
  const { say, inCharge } = useGame();
  const [open, setOpen] = useState<Besides | null>(null);
  return (
    <section className="supply-happened">
      <h2 className="vh">{say('supply-game.happened')}</h2>
      <ul>
        {(inCharge ? IN_CHARGE : OF_ALL).map((kind) => (
          <Row key={kind} kind={kind} open={open === kind} turn={() => setOpen(open === kind ? null : kind)} />
        ))}
      </ul>
    </section>
  );
}

function Row({ kind, open, turn }: { readonly kind: Besides; readonly open: boolean; readonly turn: () => void }) {
  const { at, say, events, list, make, tell, supply, words, closed } = useGame();
  const name = say(`supply-game.${kind}`);
  const strokes = events.filter(({ group, what, takenBack }) => {
    return group === at.group.id && takenBack !== true && what.kind === kind;
  });
  const count = strokes.reduce((sum, { what }) => sum + (what.kind === 'penalty' ? 1 : what.count), 0);
  const points = words.counted('points', supply.penaltyPoints);
  const fewer = (): void => {
    const change = withOneLess(list, (what) => what.kind === kind);
    // To take back a loss is to get a piece.
    if (closed && kind === 'lost') tell({ place: kind, text: say('supply-game.over-pupils') });
    else make(kind, change, say(count === 0 ? 'supply-game.none-to-take-back' : 'supply-game.not-back-returned'));
  };
  return (
    <li>
      <div className="supply-row supply-besides" data-besides={kind}>
        <span className="supply-name">
          <b>{name}</b>
          <small className="mut">
            {kind === 'penalty' ? say('supply-game.penalty-what', { points }) : say(`supply-game.${kind}-what`)}
          </small>
        </span>
        <Tally count={count} />
        <Stepper
          name={name}
          count={count}
          fewer={{ text: say('supply-game.take-last-back', { what: name }), act: fewer, off: count === 0 }}
          more={{ text: say('supply-game.add', { what: name }), act: turn, off: false, open }}
        />
        <ToldHere place={kind} />
      </div>
      {open && (kind === 'penalty' ? <GivePenalty /> : <PickPiece kind={kind} />)}
    </li>
  );
}
