// Strokes that cannot be true: the class handed out what it no longer had, or a group gave away what it never got. A stroke
// that went too far is told and then left out, so that those after it are looked at as if it had been taken back.

import { apply, changeOfGroup, changeOfStock } from './strokes.ts';
import type { SupplyEvent, SupplyIssue } from './types.ts';

/** In the order of the events; `event` is the place in the list as handed in, strokes taken back included. */
export function supplyIssues(events: readonly SupplyEvent[], stock: Readonly<Record<string, number>>): SupplyIssue[] {
  const left = new Map(Object.entries(stock));
  const held = new Map<string, Map<string, number>>();
  return events.flatMap((event, place) => {
    if (event.takenBack === true) return [];
    const has = held.get(event.group) ?? new Map<string, number>();
    held.set(event.group, has);
    const issue = issueOf(event, place, left, has);
    if (issue !== null) return [issue];
    apply(changeOfGroup(event), has);
    apply(changeOfStock(event), left);
    return [];
  });
}

function issueOf(
  { what }: SupplyEvent,
  event: number,
  left: ReadonlyMap<string, number>,
  has: ReadonlyMap<string, number>,
): SupplyIssue | null {
  switch (what.kind) {
    case 'earned': {
      const { piece, count } = what;
      const leftOfIt = left.get(piece) ?? 0;
      return count > leftOfIt ? { code: 'stock-exceeded', event, piece, count, left: leftOfIt } : null;
    }
    case 'lost':
    case 'returned': {
      const { piece, count } = what;
      const hasOfIt = has.get(piece) ?? 0;
      return count > hasOfIt ? { code: 'more-than-the-group-has', event, piece, count, has: hasOfIt } : null;
    }
    case 'dropped':
    case 'penalty':
      return null;
  }
}
