// A stopwatch with large buttons. While it runs, one says that the build stands, the other that it fell.

import { useEffect, useState } from 'react';
import { useCard } from './card.ts';
import type { Stopwatch } from './stopwatch.ts';
import { AT_NOUGHT, secondsOn, started, stopped } from './stopwatch.ts';

/** ms. Tenths of a second are shown. */
const TICK_MS = 100;

export function StopwatchPanel({
  stood,
  fell,
}: {
  readonly stood: (seconds: number) => void;
  readonly fell: (seconds: number) => void;
}) {
  const { say, words } = useCard();
  const [watch, setWatch] = useState<Stopwatch>(AT_NOUGHT);
  const running = watch.startedMs !== null;
  const nowMs = useTicks(running);
  const stop = (tell: (seconds: number) => void): void => {
    const at = performance.now();
    setWatch(stopped(watch, at));
    tell(secondsOn(watch, at));
  };
  return (
    <div className="card-watch">
      <p className="card-watch-shows" role="timer" aria-live="off">
        {say('score-card.watch-shows', { seconds: words.fixed(secondsOn(watch, nowMs), 1) })}
      </p>
      <div className="card-watch-buttons">
        {running ? (
          <>
            <button key="stop" type="button" className="btn card-big" onClick={() => stop(stood)}>
              {say('score-card.stop')}
            </button>
            <button key="fell" type="button" className="btn card-big" onClick={() => stop(fell)}>
              {say('score-card.it-fell')}
            </button>
          </>
        ) : (
          <>
            <button
              key="stop"
              type="button"
              className="btn card-big"
              onClick={() => setWatch(started(watch, performance.now()))}
            >
              {say(watch.gatheredMs === 0 ? 'score-card.start' : 'score-card.go-on')}
            </button>
            <button type="button" className="btn" disabled={watch.gatheredMs === 0} onClick={() => setWatch(AT_NOUGHT)}>
              {say('score-card.reset')}
            </button>
          </>
        )}
      </div>
    </div>
  );
}

/** The time now, told anew while the watch runs. */
function useTicks(running: boolean): number {
  const [nowMs, setNowMs] = useState(() => performance.now());
  useEffect(() => {
    if (!running) return;
    const timer = setInterval(() => setNowMs(performance.now()), TICK_MS);
    return () => clearInterval(timer);
  }, [running]);
  return nowMs;
}
