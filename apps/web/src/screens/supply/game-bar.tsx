// The game as it runs: its clock or its turns, the round at work, and who carries.

import { COUNT_MOST } from '@cairnmark/engine';
import { Carrier } from './carrier.tsx';
import { Clock } from './clock.tsx';
import { useGame } from './game.ts';
import { newClock } from './game-clock.ts';
import { inRound } from './game-memory.ts';

export function GameBar() {
  return (
    <div className="supply-bar">
      <Clock />
      <Round />
      <Carrier />
    </div>
  );
}

/** A game that is over begins anew with the next round; that is for whoever is in charge. */
function Round() {
  const { say, memory, remember, over, closed, rule } = useGame();
  const { round } = memory;
  const stays = closed || round >= COUNT_MOST;
  const next = (): void => {
    const clock = over ? newClock(rule.ends) : memory.clock;
    if (!stays) remember({ ...inRound(memory, round + 1), clock });
  };
  return (
    <section className="supply-round">
      <h2 className="lab">{say('supply-game.round-now')}</h2>
      <output className="supply-big">{round}</output>
      <div className="supply-buttons">
        <button
          type="button"
          className="btn"
          aria-disabled={round === 1}
          onClick={() => remember(inRound(memory, round - 1))}
        >
          {say('supply-game.round-before')}
        </button>
        <button type="button" className="btn" aria-disabled={stays} onClick={next}>
          {say('supply-game.round-next')}
        </button>
      </div>
    </section>
  );
}
