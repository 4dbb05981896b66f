import type { SupplyRule } from '@cairnmark/scoring';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { share } from '../../../../../tests/tools/share.ts';
import { clockText, fittingClock, isGameOver, isNew, leftMs, newClock, paused, started, turned } from './game-clock.ts';

const rule = (ends: SupplyRule['ends']): SupplyRule => ({ ends, handOver: 'at-a-touch', dropped: 'must-be-fetched' });
const TIME = { kind: 'time', seconds: 90 } as const;
const TURNS = { kind: 'turns', turns: 3 } as const;
const EMPTY = { kind: 'stock-empty' } as const;
const HALF_DONE = paused(started(newClock(TIME), 1000), 46_000);

describe('a game of some time', () => {
  it('counts down while it runs, stands still when paused, and goes on from there', () => {
    const runs = started(newClock(TIME), 1000);
    expect(leftMs(runs, 46_000)).toBe(45_000);
    expect(leftMs(HALF_DONE, 99_000)).toBe(45_000);
    expect(leftMs(started(HALF_DONE, 200_000), 210_000)).toBe(35_000);
    expect([newClock(TIME), runs, HALF_DONE].map((clock) => isNew(clock, TIME))).toEqual([true, false, false]);
  });

  it('is over at nought, not a moment before, and is not started again then', () => {
    const runs = started(newClock(TIME), 0);
    const over = (nowMs: number) => isGameOver(rule(TIME), runs, {}, nowMs);
    expect([over(89_999), over(90_000), over(500_000)]).toEqual([false, true, true]);
    const done = paused(runs, 500_000);
    expect(leftMs(done, 0)).toBe(0);
    expect(started(done, 600_000)).toBe(done);
  });

  it('gives no more than was left when somebody sets the clock of the device (seed 5211)', () => {
    fc.assert(
      fc.property(fc.integer(), fc.integer(), fc.integer(), (first, second, third) => {
        const stopped = paused(started(newClock(TIME), first), second);
        expect(stopped.leftMs).toBeGreaterThanOrEqual(0);
        expect(stopped.leftMs).toBeLessThanOrEqual(90_000);
        expect(leftMs(started(stopped, second), third)).toBeLessThanOrEqual(stopped.leftMs);
      }),
      { seed: 5211, numRuns: share(2000, 200) },
    );
  });
});

describe('other ends', () => {
  it('turns are counted one by one, back too, and no further than the game has', () => {
    const two = turned(turned(newClock(TURNS), TURNS, 1), TURNS, 1);
    expect(two.turns).toBe(2);
    expect(turned(two, TURNS, -1).turns).toBe(1);
    expect(turned(newClock(TURNS), TURNS, -1).turns).toBe(0);
    const all = turned(two, TURNS, 1);
    expect(turned(all, TURNS, 1).turns).toBe(3);
    expect([two, all].map((clock) => isGameOver(rule(TURNS), clock, { cube: 1 }, 0))).toEqual([false, true]);
  });

  it('a game until nothing is left is over with the last piece', () => {
    const over = (cube: number) => isGameOver(rule(EMPTY), newClock(EMPTY), { cube, cone: 0 }, 0);
    expect([over(1), over(0)]).toEqual([false, true]);
  });
});

it('a kept clock is taken up as far as it fits the rule', () => {
  const runs = started(newClock(TIME), 5000);
  expect(fittingClock(runs, TIME)).toEqual(runs);
  expect(fittingClock(null, TIME)).toEqual(newClock(TIME));
  expect(fittingClock(runs, { kind: 'time', seconds: 60 })).toEqual(newClock({ kind: 'time', seconds: 60 }));
  // The clock of a game of turns has no time left, which is not the end of a game of some time.
  expect(fittingClock(turned(newClock(TURNS), TURNS, 1), TIME)).toEqual(newClock(TIME));
  expect(fittingClock({ ...newClock(TURNS), turns: 9 }, TURNS).turns).toBe(3);
  expect(fittingClock(runs, TURNS)).toEqual(newClock(TURNS));
});

it('a second that has begun is shown', () => {
  expect([300_000, 245_000, 244_001, 59_000, 1, 0].map(clockText)).toEqual([
    '5:00',
    '4:05',
    '4:05',
    '0:59',
    '0:01',
    '0:00',
  ]);
});
