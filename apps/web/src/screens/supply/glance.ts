// All groups at a glance: kind by kind, what each group has, what is lost and what the class has left. Together they are
// the stock, whatever was played.

import type { Challenge } from '@cairnmark/engine';
import { stockOf } from '@cairnmark/engine';
import type { SupplyEvent } from '@cairnmark/scoring';
import { exactSum, stockLeft, supplies } from '@cairnmark/scoring';

export interface GlanceRow {
  readonly kind: string;
  /** In the order of the groups handed in. */
  readonly has: readonly number[];
  readonly lost: number;
  readonly left: number;
  /** All of these added up. */
  readonly together: number;
}

export function glance(events: readonly SupplyEvent[], challenge: Challenge, groups: readonly string[]): GlanceRow[] {
  const stock = stockOf(challenge);
  const left = stockLeft(events, stock);
  const all = new Map(supplies(events, stock).map((one) => [one.group, one.pieces]));
  return challenge.kit.kinds.map(({ id: kind }) => {
    const has = groups.map((group) => all.get(group)?.[kind] ?? 0);
    const lost = lostOf(kind, events);
    const leftOfIt = left[kind] ?? 0;
    return { kind, has, lost, left: leftOfIt, together: exactSum([...has, lost, leftOfIt]) };
  });
}

/** The kinds added up: the last row of the table. */
export function allKinds(rows: readonly GlanceRow[], groups: readonly string[]): Omit<GlanceRow, 'kind'> {
  const sum = (of: (row: GlanceRow) => number): number => exactSum(rows.map(of));
  return {
    has: groups.map((_, k) => sum(({ has }) => has[k] ?? 0)),
    lost: sum(({ lost }) => lost),
    left: sum(({ left }) => left),
    together: sum(({ together }) => together),
  };
}

const lostOf = (kind: string, events: readonly SupplyEvent[]): number =>
  exactSum(
    events.map(({ what, takenBack }) => {
      return takenBack !== true && what.kind === 'lost' && what.piece === kind ? what.count : 0;
    }),
  );
