import { describe, expect, it } from 'vitest';
import { goingOn, readStopwatch, toKeep } from './kept-stopwatch.ts';
import { AT_NOUGHT, secondsOn, started, stopped } from './stopwatch.ts';

const NOON_MS = 1_700_000_000_000;

describe('a stopwatch over a reload', () => {
  it('goes on with the time that went by while the page was away', () => {
    const watch = started(stopped(started(AT_NOUGHT, 1000), 3000), 10_000);
    const kept = toKeep(watch, { nowMs: 14_000, ofDayMs: NOON_MS });
    // 2 s and 4 s so far; 5 s later a new page has stood for 0.3 s.
    const after = goingOn(kept, { nowMs: 300, ofDayMs: NOON_MS + 5000 });
    expect(secondsOn(after, 300)).toBe(11);
    expect(secondsOn(after, 1300)).toBe(12);
  });

  it('loses nothing gathered, and shows nothing below nought, when the clock of the day was set back', () => {
    const watch = started(stopped(started(AT_NOUGHT, 0), 2000), 10_000);
    const kept = toKeep(watch, { nowMs: 10_000, ofDayMs: NOON_MS });
    const after = goingOn(kept, { nowMs: 300, ofDayMs: NOON_MS - 3_600_000 });
    expect(secondsOn(after, 300)).toBe(2);
    expect(secondsOn(goingOn({ gatheredMs: 0, startedAtMs: NOON_MS }, { nowMs: 5, ofDayMs: 0 }), 5)).toBe(0);
  });

  it('is at nought when it stood still, was forgotten for a day, or cannot be read', () => {
    expect(toKeep(AT_NOUGHT, { nowMs: 5, ofDayMs: NOON_MS })).toBe(null);
    expect(goingOn(null, { nowMs: 5, ofDayMs: NOON_MS })).toBe(AT_NOUGHT);
    const kept = { gatheredMs: 0, startedAtMs: NOON_MS };
    expect(goingOn(kept, { nowMs: 5, ofDayMs: NOON_MS + 86_400_001 })).toBe(AT_NOUGHT);
    expect(readStopwatch({ gatheredMs: -1, startedAtMs: 4 })).toBe(null);
    expect(readStopwatch('soon')).toBe(null);
    expect(readStopwatch(kept)).toEqual(kept);
  });
});
