import { SECONDS_MOST } from '@cairnmark/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { AT_NOUGHT, secondsOn, started, stopped } from './stopwatch.ts';

describe('a stopwatch', () => {
  it('shows what went by since it was started, in whole tenths and never too much', () => {
    const watch = started(AT_NOUGHT, 1000);
    expect(secondsOn(watch, 1000)).toBe(0);
    expect(secondsOn(watch, 3499)).toBe(2.4);
    expect(secondsOn(watch, 3500)).toBe(2.5);
  });

  it('stands still once stopped, and goes on from there', () => {
    const first = stopped(started(AT_NOUGHT, 1000), 3500);
    expect(secondsOn(first, 99_000)).toBe(2.5);
    const second = started(first, 10_000);
    expect(secondsOn(second, 11_000)).toBe(3.5);
  });

  it('is not started twice by a second tap', () => {
    const watch = started(AT_NOUGHT, 1000);
    expect(started(watch, 5000)).toBe(watch);
  });

  it('shows no more than a record can hold, and nothing below nought', () => {
    expect(secondsOn(started(AT_NOUGHT, 0), 1e12)).toBe(SECONDS_MOST);
    expect(secondsOn(started(AT_NOUGHT, 5000), 4000)).toBe(0);
  });

  it('gathers the times that it ran (seed 6501)', () => {
    const runs = fc.array(fc.tuple(fc.nat(100_000), fc.nat(100_000)), { maxLength: 12 });
    fc.assert(
      fc.property(runs, (spans) => {
        let [watch, now, ran] = [AT_NOUGHT, 0, 0];
        for (const [pause, run] of spans) {
          watch = started(watch, now + pause);
          now += pause + run;
          ran += run;
          watch = stopped(watch, now);
        }
        expect(secondsOn(watch, now + 7)).toBe(Math.floor(ran / 100) / 10);
      }),
      { seed: 6501 },
    );
  });
});
