// What this device remembers of the supply game of a challenge: round, carriers, clock. It runs on over a reload.

import type { SupplyEvent, SupplyRule } from '@cairnmark/scoring';
import { useEffect, useState } from 'preact/hooks';
import { perTry } from '../../store/per-try.ts';
import { lastRound } from '../../store/supply-changes.ts';
import { useSession } from '../../store/use-session.ts';
import type { GameClock } from './game-clock.ts';
import { fittingClock } from './game-clock.ts';
import type { GameMemory } from './game-memory.ts';
import { readGame } from './game-memory.ts';
import { whenTime } from './when-time.ts';

const memory = perTry('cairnmark.supply', readGame);

export function useRememberedGame(
  challenge: string,
  rule: SupplyRule,
  events: readonly SupplyEvent[],
): readonly [GameMemory, (game: GameMemory) => void] {
  const classId = useSession(({ place }) => place?.classId ?? '');
  const [game, setGame] = useState((): GameMemory => {
    const kept = memory.recall(classId, challenge);
    const clock = fittingClock(kept?.clock ?? null, rule.ends);
    return { round: kept?.round ?? lastRound(events), carriers: kept?.carriers ?? {}, clock };
  });
  useRepaintAtEnd(game.clock);
  const put = (next: GameMemory): void => {
    setGame(next);
    memory.remember(classId, challenge, next);
  };
  return [game, put];
}

/** Draws the screen anew when the time is up. */
function useRepaintAtEnd({ endsAtMs }: GameClock): void {
  const [, setTurn] = useState(0);
  useEffect(() => {
    if (endsAtMs === null || endsAtMs < Date.now()) return;
    return whenTime(endsAtMs, () => setTurn((turn) => turn + 1));
  }, [endsAtMs]);
}
