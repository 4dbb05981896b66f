// A stopwatch as a value: what it shows follows from when it was started and the time now. Milliseconds of a clock that
// never goes back; seconds as records keep them.

import { SECONDS_MOST } from '@cairnmark/engine';

export interface Stopwatch {
  /** Milliseconds gathered before it was last started. */
  readonly gatheredMs: number;
  /** When it was started; null: it stands still. */
  readonly startedMs: number | null;
}

export const AT_NOUGHT: Stopwatch = { gatheredMs: 0, startedMs: null };

export const started = (watch: Stopwatch, nowMs: number): Stopwatch =>
  watch.startedMs === null ? { ...watch, startedMs: nowMs } : watch;

export const stopped = (watch: Stopwatch, nowMs: number): Stopwatch => ({
  gatheredMs: elapsedMs(watch, nowMs),
  startedMs: null,
});

/** A thumb on a button is no better than a tenth of a second. */
export function secondsOn(watch: Stopwatch, nowMs: number): number {
  return Math.min(Math.floor(elapsedMs(watch, nowMs) / 100) / 10, SECONDS_MOST);
}

const elapsedMs = ({ gatheredMs, startedMs }: Stopwatch, nowMs: number): number =>
  gatheredMs + (startedMs === null ? 0 : Math.max(0, nowMs - startedMs));
