// A stopwatch over a reload of the page. While the page stands, the time comes from a clock that never goes back; over a
// reload only the clock of the day is left, which somebody may have set: it never takes anything from what was gathered.

import { SECONDS_MOST } from '@cairnmark/engine';
import type { Stopwatch } from './stopwatch.ts';
import { AT_NOUGHT } from './stopwatch.ts';

/** A running stopwatch as the device keeps it; milliseconds. */
export interface KeptStopwatch {
  readonly gatheredMs: number;
  /** Of the clock of the day. */
  readonly startedAtMs: number;
}

export interface Clocks {
  /** Never goes back; begins anew with each page. */
  readonly nowMs: number;
  readonly ofDayMs: number;
}

/** null: it stands still, and there is nothing to keep. */
export const toKeep = ({ gatheredMs, startedMs }: Stopwatch, { nowMs, ofDayMs }: Clocks): KeptStopwatch | null =>
  startedMs === null ? null : { gatheredMs, startedAtMs: ofDayMs - (nowMs - startedMs) };

/** A watch that ran for longer than a record can hold was forgotten: it is back at nought. */
export function goingOn(kept: KeptStopwatch | null, { nowMs, ofDayMs }: Clocks): Stopwatch {
  if (kept === null) return AT_NOUGHT;
  const ranMs = Math.max(0, ofDayMs - kept.startedAtMs);
  if (kept.gatheredMs + ranMs > SECONDS_MOST * 1000) return AT_NOUGHT;
  return { gatheredMs: kept.gatheredMs, startedMs: nowMs - ranMs };
}

/** Of what the device kept; null: not of use. */
export function readStopwatch(kept: unknown): KeptStopwatch | null {
  const { gatheredMs, startedAtMs } = (kept ?? {}) as Partial<Record<keyof KeptStopwatch, unknown>>;
  if (!isTime(gatheredMs) || !isTime(startedAtMs)) return null;
  return { gatheredMs, startedAtMs };
}

const isTime = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value) && value >= 0;
