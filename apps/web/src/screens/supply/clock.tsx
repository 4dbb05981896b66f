// How far the game is: time that runs down, turns that are counted, or pieces that are left. Says when it is over.

import { exactSum } from '@cairnmark/scoring';
import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { Icon } from '../../parts/icon.tsx';
import { useGame } from './game.ts';
import type { GameClock } from './game-clock.ts';
import { clockText, isNew, leftMs, newClock, paused, started, turned } from './game-clock.ts';

export function Clock() {
  const { rule, say, over, inCharge } = useGame();
  const { kind } = rule.ends;
  return (
    <section className="supply-clock">
      <h2 className="lab">{say('supply-game.game')}</h2>
      {kind === 'time' && <Time />}
      {kind === 'turns' && <Turns turns={rule.ends.turns} />}
      {kind === 'stock-empty' && <PiecesLeft />}
      <p role="status" className="supply-over">
        {over && (
          <>
            <b>{say(`supply-game.over-${kind}`)}</b>{' '}
            {say(inCharge ? 'supply-game.over-in-charge' : 'supply-game.over-pupils')}
          </>
        )}
      </p>
    </section>
  );
}

function Time() {
  const { say, memory, remember, over } = useGame();
  const { clock } = memory;
  const running = clock.endsAtMs !== null && !over;
  const nowMs = useTicks(running);
  const put = (next: GameClock): void => remember({ ...memory, clock: next });
  const toggle = (): void => put(running ? paused(clock, Date.now()) : started(clock, Date.now()));
  return (
    <>
      <p className="supply-big" role="timer" aria-live="off">
        {clockText(leftMs(clock, nowMs))}
        <small> {say('supply-game.minutes')}</small>
      </p>
      <Buttons>
        {!over && (
          <button type="button" className="btn supply-go" onClick={toggle}>
            <Icon name="clock" />
            {say(running ? 'supply-game.pause' : 'supply-game.start')}
          </button>
        )}
      </Buttons>
    </>
  );
}

function Turns({ turns }: { readonly turns: number }) {
  const { say, memory, remember, over, closed, rule, words } = useGame();
  const { clock } = memory;
  const stays = clock.turns === 0 || closed;
  const turn = (by: 1 | -1): void => remember({ ...memory, clock: turned(clock, rule.ends, by) });
  return (
    <>
      <p className="supply-big" aria-live="polite">
        {turns - clock.turns}
        <small> {say('supply-game.turns-left', { turns: words.counted('turns', turns) })}</small>
      </p>
      <Buttons>
        {!over && (
          <button type="button" className="btn supply-go" onClick={() => turn(1)}>
            {say('supply-game.turn-next')}
          </button>
        )}
        <button type="button" className="btn" aria-disabled={stays} onClick={() => !stays && turn(-1)}>
          {say('supply-game.turn-back')}
        </button>
      </Buttons>
    </>
  );
}

function PiecesLeft() {
  const { say, left } = useGame();
  return (
    <p className="supply-big">
      {exactSum(Object.values(left))}
      <small> {say('supply-game.pieces-left')}</small>
    </p>
  );
}

/** With the one that sets the game again, where there is something to set; after the end for whoever is in charge. */
function Buttons({ children }: { readonly children: ComponentChildren }) {
  const { say, rule, memory, remember, closed } = useGame();
  const stays = isNew(memory.clock, rule.ends) || closed;
  return (
    <div className="supply-buttons">
      {children}
      <button
        type="button"
        className="btn"
        aria-disabled={stays}
        onClick={() => !stays && remember({ ...memory, clock: newClock(rule.ends) })}
      >
        {say('supply-game.again')}
      </button>
    </div>
  );
}

/** ms. Seconds are shown; a quarter of one is not seen as late. */
const TICK_MS = 250;

/** The time now, told anew while the clock runs. */
function useTicks(running: boolean): number {
  const [, setTurn] = useState(0);
  useEffect(() => {
    if (!running) return;
    const timer = setInterval(() => setTurn((turn) => turn + 1), TICK_MS);
    return () => clearInterval(timer);
  }, [running]);
  return Date.now();
}
