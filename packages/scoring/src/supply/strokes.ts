// What one stroke on a supply list does: to the pieces of its group, and to the stock of the class. Pieces only move
// between the two, or are lost: earned less returned is what the stock gave away.

import type { SupplyEvent } from './types.ts';

/** Pieces by which a number of one kind changes. */
export type Change = readonly [kind: string, count: number];

/** The strokes that were not taken back, in their order. */
export const strokes = (events: readonly SupplyEvent[]): SupplyEvent[] =>
  events.filter(({ takenBack }) => takenBack !== true);

/** What a group has of every kind that a stroke of its own tells of: rule [S1]. Small, for where nothing else is asked. */
export function piecesOf(events: readonly SupplyEvent[], group: string): ReadonlyMap<string, number> {
  const pieces = new Map<string, number>();
  for (const event of strokes(events)) if (event.group === group) apply(changeOfGroup(event), pieces);
  return pieces;
}

/** A dropped piece never became the group's: it changes nothing. */
export function changeOfGroup({ what }: SupplyEvent): Change | null {
  switch (what.kind) {
    case 'earned':
      return [what.piece, what.count];
    case 'lost':
    case 'returned':
      return [what.piece, -what.count];
    case 'dropped':
    case 'penalty':
      return null;
  }
}

/** A lost piece does not come back. */
export function changeOfStock({ what }: SupplyEvent): Change | null {
  switch (what.kind) {
    case 'earned':
      return [what.piece, -what.count];
    case 'returned':
      return [what.piece, what.count];
    case 'lost':
    case 'dropped':
    case 'penalty':
      return null;
  }
}

/** Adds a change to the numbers by kind. */
export function apply(change: Change | null, counts: Map<string, number>): void {
  if (change === null) return;
  const [kind, count] = change;
  counts.set(kind, (counts.get(kind) ?? 0) + count);
}
