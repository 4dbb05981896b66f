// The list of the group: every kind with its drawing, its strokes, fewer and more, and what the class has left of it.

import type { KindOfPiece } from '@cairnmark/engine';
import { SolidPicture } from '../../parts/solid-picture.tsx';
import { withOneEarned } from '../../store/handing-out.ts';
import { withOneLess } from '../../store/supply-changes.ts';
import { useGame } from './game.ts';
import { Stepper } from './stepper.tsx';
import { Tally } from './tally.tsx';
import { ToldHere } from './told-here.tsx';

export function Kinds() {
  const { at, say } = useGame();
  return (
    <section>
      <h2 className="vh">{say('supply-game.kinds')}</h2>
      <ul className="supply-kinds">
        {at.challenge.kit.kinds.map((kind) => (
          <Kind key={kind.id} kind={kind} />
        ))}
      </ul>
    </section>
  );
}

function Kind({ kind: { id, name } }: { readonly kind: KindOfPiece }) {
  const { say, supply, left, allLeft, solids, scale, list, closed, make, tell, at } = useGame();
  const has = supply.pieces[id] ?? 0;
  const leftOfIt = left[id] ?? 0;
  const crushed = (allLeft[id] ?? 0) - leftOfIt;
  const solid = solids.get(id);
  const place = `kind ${id}`;
  const more = (): void => {
    if (closed) tell({ place, text: say('supply-game.over-pupils') });
    else
      make(
        place,
        withOneEarned(list, id),
        say(crushed > 0 ? 'supply-game.none-whole' : 'supply-game.none-left', { kind: name }),
      );
  };
  const fewer = (): void => {
    const isOne = withOneLess(list, (what) => what.kind === 'earned' && what.piece === id);
    make(place, isOne, say('supply-game.has-none', { group: at.group.name, kind: name }));
  };
  return (
    <li className="supply-row" data-kind={id}>
      {solid === undefined ? <span /> : <SolidPicture solid={solid} scale={scale} />}
      <span className="supply-name">
        <b>{name}</b>
        <small className={leftOfIt === 0 ? 'supply-none' : 'mut'}>
          {leftOfIt === 0 ? say('supply-game.left-none') : say('supply-game.left', { count: leftOfIt })}
          {crushed > 0 && `, ${say('supply-game.left-crushed', { count: crushed })}`}
        </small>
      </span>
      <Tally count={has} />
      <Stepper
        name={name}
        count={has}
        fewer={{ text: say('supply-game.fewer', { kind: name }), act: fewer, off: has === 0 }}
        more={{ text: say('supply-game.more', { kind: name }), act: more, off: leftOfIt === 0 || closed }}
      />
      <ToldHere place={place} />
    </li>
  );
}
