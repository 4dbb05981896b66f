// The clock of a supply game as a value: what it shows follows from when it ends and the time now. Times are those of the
// clock of the day, in ms, so that it runs on over a reload; set back or forth, that clock never gives more than was left.

import type { SupplyRule } from '@cairnmark/scoring';
import { isOver } from '@cairnmark/scoring';

type Ends = SupplyRule['ends'];

export interface GameClock {
  /** How long the game goes, ms; 0 where no time is set. */
  readonly fullMs: number;
  /** What was left when it was last started or stopped, ms. */
  readonly leftMs: number;
  /** When it will be over; null: it stands still. */
  readonly endsAtMs: number | null;
  readonly turns: number;
}

/** Nothing played yet. */
export const newClock = (ends: Ends): GameClock => ({
  fullMs: fullMs(ends),
  leftMs: fullMs(ends),
  endsAtMs: null,
  turns: 0,
});

export const isNew = (clock: GameClock, ends: Ends): boolean =>
  clock.turns === 0 && clock.endsAtMs === null && clock.leftMs === fullMs(ends);

export const leftMs = ({ leftMs: before, endsAtMs }: GameClock, nowMs: number): number =>
  endsAtMs === null ? before : Math.min(before, Math.max(0, endsAtMs - nowMs));

export function started(clock: GameClock, nowMs: number): GameClock {
  const left = leftMs(clock, nowMs);
  return clock.endsAtMs !== null || left === 0 ? clock : { ...clock, leftMs: left, endsAtMs: nowMs + left };
}

export const paused = (clock: GameClock, nowMs: number): GameClock => ({
  ...clock,
  leftMs: leftMs(clock, nowMs),
  endsAtMs: null,
});

/** `by`: 1 for the next turn, -1 for one that was counted by mistake. Stays within the turns of the game. */
export function turned(clock: GameClock, ends: Ends, by: 1 | -1): GameClock {
  const most = ends.kind === 'turns' ? ends.turns : 0;
  return { ...clock, turns: Math.min(most, Math.max(0, clock.turns + by)) };
}

/** `left`: pieces that the class has left, by kind id. */
export function isGameOver(
  rule: SupplyRule,
  clock: GameClock,
  left: Readonly<Record<string, number>>,
  nowMs: number,
): boolean {
  const toGoMs = leftMs(clock, nowMs);
  // At nought all of it is played, whatever seconds come to in floating point.
  const seconds = rule.ends.kind !== 'time' ? 0 : toGoMs === 0 ? rule.ends.seconds : rule.ends.seconds - toGoMs / 1000;
  return isOver(rule, { seconds, turns: clock.turns }, left);
}

/** A clock as it was kept, fitted to the rule as it is now: one of another length begins anew. */
export function fittingClock(kept: GameClock | null, ends: Ends): GameClock {
  const fresh = newClock(ends);
  if (kept === null || kept.fullMs !== fresh.fullMs) return fresh;
  return ends.kind === 'turns' ? { ...fresh, turns: Math.min(kept.turns, ends.turns) } : { ...kept, turns: 0 };
}

/** "4:05": whole seconds, the one that has begun counts. */
export function clockText(toGoMs: number): string {
  const seconds = Math.ceil(toGoMs / 1000);
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
}

const fullMs = (ends: Ends): number => (ends.kind === 'time' ? ends.seconds * 1000 : 0);
