// A stopwatch with large buttons. While it runs, one says that the build stands, the other that it fell.

import { useEffect, useState } from 'preact/hooks';
import { useCard } from './card.ts';
import { AT_NOUGHT, secondsOn, started, stopped } from './stopwatch.ts';
import { useStopwatch } from './use-stopwatch.ts';

/** ms. Tenths of a second are shown. */
const TICK_MS = 100;

export function StopwatchPanel({
  stood,
  fell,
}: {
  readonly stood: (seconds: number) => void;
  readonly fell: (seconds: number) => void;
}) {
  const { at, say, words } = useCard();
  const [watch, setWatch] = useStopwatch(at.attempt.id);
  const running = watch.startedMs !== null;
  const nowMs = useTicks(running);
  const start = (): void => setWatch(started(watch, performance.now()));
  const stop = (tell: (seconds: number) => void): void => {
    const at = performance.now();
    setWatch(stopped(watch, at));
    tell(secondsOn(watch, at));
  };
  return (
    <div className="card-watch">
      <p className="card-watch-shows" role="timer" aria-live="off">
        {say('score-card.watch-shows', { seconds: words.number(secondsOn(watch, nowMs), 1) })}
      </p>
      <div className="card-watch-buttons">
        <button type="button" className="btn card-big" onClick={once(running ? () => stop(stood) : start)}>
          {say(running ? 'score-card.stop' : watch.gatheredMs === 0 ? 'score-card.start' : 'score-card.go-on')}
        </button>
        <button
          type="button"
          className="btn card-big"
          disabled={!running && watch.gatheredMs === 0}
          onClick={once(running ? () => stop(fell) : () => setWatch(AT_NOUGHT))}
        >
          {say(running ? 'score-card.it-fell' : 'score-card.reset')}
        </button>
      </div>
    </div>
  );
}

/** The second tap of a hasty double tap meant the button that stood there before: it does nothing. */
const once =
  (act: () => void) =>
  ({ detail }: MouseEvent): void => {
    if (detail < 2) act();
  };

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
