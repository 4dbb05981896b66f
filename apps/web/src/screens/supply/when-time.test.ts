import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { whenTime } from './when-time.ts';

beforeEach(() => void vi.useFakeTimers({ now: 0 }));
afterEach(() => void vi.useRealTimers());

it('it is done once, when the time has come and not before', () => {
  const act = vi.fn();
  whenTime(60_000, act);
  vi.advanceTimersByTime(59_999);
  expect(act).not.toHaveBeenCalled();
  vi.advanceTimersByTime(60_000);
  expect(act).toHaveBeenCalledOnce();
  expect(vi.getTimerCount()).toBe(0);
});

it('a device that slept over it does it as soon as it is awake', () => {
  const act = vi.fn();
  whenTime(300_000, act);
  vi.advanceTimersByTime(1000);
  // Asleep: the clock of the day goes on, timers do not.
  vi.setSystemTime(900_000);
  vi.advanceTimersByTime(250);
  expect(act).toHaveBeenCalledOnce();
});

it('a clock that is set back has it wait, and called off it never comes', () => {
  const act = vi.fn();
  const callOff = whenTime(60_000, act);
  vi.advanceTimersByTime(30_000);
  vi.setSystemTime(0);
  vi.advanceTimersByTime(59_000);
  expect(act).not.toHaveBeenCalled();
  callOff();
  vi.advanceTimersByTime(600_000);
  expect(act).not.toHaveBeenCalled();
  expect(vi.getTimerCount()).toBe(0);
});
