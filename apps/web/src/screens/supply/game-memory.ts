// What this device remembers of a supply game beside the class: the round at work, who carries for each group, the clock.

import { COUNT_MOST } from '@cairnmark/engine';
import type { GameClock } from './game-clock.ts';

export interface GameMemory {
  /** Counted from 1. */
  readonly round: number;
  /** Roles or numbers by group id. */
  readonly carriers: Readonly<Record<string, string>>;
  readonly clock: GameClock;
}

/** Of what the device kept; null: not of use. */
export function readGame(kept: unknown): GameMemory | null {
  const { round, carriers, clock } = (kept ?? {}) as Partial<Record<keyof GameMemory, unknown>>;
  if (!isCount(round) || round < 1 || !isTexts(carriers) || !isClock(clock)) return null;
  return { round, carriers, clock };
}

export const withCarrier = (game: GameMemory, group: string, carrier: string | null): GameMemory => {
  const { [group]: _before, ...others } = game.carriers;
  return { ...game, carriers: carrier === null ? others : { ...others, [group]: carrier } };
};

export const inRound = (game: GameMemory, round: number): GameMemory => ({
  ...game,
  round: Math.min(COUNT_MOST, Math.max(1, round)),
});

function isClock(kept: unknown): kept is GameClock {
  const { fullMs, leftMs, endsAtMs, turns } = (kept ?? {}) as Partial<Record<keyof GameClock, unknown>>;
  return isAmount(fullMs) && isAmount(leftMs) && (endsAtMs === null || isAmount(endsAtMs)) && isCount(turns);
}

const isTexts = (kept: unknown): kept is Readonly<Record<string, string>> =>
  typeof kept === 'object' && kept !== null && Object.values(kept).every((text) => typeof text === 'string');

const isAmount = (kept: unknown): kept is number => typeof kept === 'number' && Number.isFinite(kept) && kept >= 0;

const isCount = (kept: unknown): kept is number => isAmount(kept) && Number.isInteger(kept) && kept <= COUNT_MOST;
