// Pieces that the class can hand out: whole ones. A class file may say that a crushed one was earned, so that old files stay
// as they are; the Supply screen hands none out.

import type { Challenge } from '@cairnmark/engine';
import { wholePieces } from '@cairnmark/engine';
import type { SupplyEvent } from '@cairnmark/scoring';
import { stockLeft } from '@cairnmark/scoring';
import type { Change } from './class-changes.ts';
import type { AtList } from './supply-changes.ts';
import { eventsOf, withStroke } from './supply-changes.ts';

/** Pieces that are left and whole, by kind id; 0 where as many were crushed as are left, or more. */
export function wholeLeft(events: readonly SupplyEvent[], { kit }: Challenge): Readonly<Record<string, number>> {
  const whole = Object.fromEntries(kit.kinds.map((kind) => [kind.id, wholePieces(kind)]));
  return Object.fromEntries(Object.entries(stockLeft(events, whole)).map(([id, count]) => [id, Math.max(0, count)]));
}

/** One piece earned; the class as it was where no whole one is left. */
export const withOneEarned =
  (at: AtList, piece: string): Change =>
  (record) => {
    const challenge = record.challenges.find(({ id }) => id === at.challenge);
    if (challenge === undefined) return record;
    const left = wholeLeft(eventsOf(record, at.challenge), challenge)[piece] ?? 0;
    return left === 0 ? record : withStroke(at, { kind: 'earned', piece, count: 1 })(record);
  };
