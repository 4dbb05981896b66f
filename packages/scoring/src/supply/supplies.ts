// What every group has, from the strokes on its supply list. Rules [S..] of RULES.md. Strokes are counted as they stand:
// whether one of them goes too far, issues.ts says.

import { byId } from '../ranking/places.ts';
import { exactSum } from '../rounding/sum.ts';
import { piecesOf, strokes } from './strokes.ts';
import type { Supply, SupplyEvent } from './types.ts';

/**
 * One supply a group with a stroke that was not taken back, by group id. Every kind of `stock` is listed, in its order,
 * also where the group has none of it.
 */
export function supplies(events: readonly SupplyEvent[], stock: Readonly<Record<string, number>>): Supply[] {
  const counted = strokes(events);
  const groups = [...new Set(counted.map(({ group }) => group))].sort(byId);
  return groups.map((group) =>
    supplyOf(
      group,
      counted.filter((event) => event.group === group),
      Object.keys(stock),
    ),
  );
}

function supplyOf(group: string, events: readonly SupplyEvent[], kinds: readonly string[]): Supply {
  const pieces = new Map([...kinds.map((kind) => [kind, 0] as const), ...piecesOf(events, group)]);
  return {
    group,
    pieces: Object.fromEntries(pieces),
    dropped: countOf('dropped', events),
    lost: countOf('lost', events),
    penaltyPoints: exactSum(events.map(({ what }) => (what.kind === 'penalty' ? what.points : 0))),
    byRound: earnedBy(events, ({ round }) => round)
      .map(([round, count]) => ({ round, pieces: count }))
      .sort((a, b) => a.round - b.round),
    byCarrier: earnedBy(events, ({ carrier }) => carrier)
      .map(([carrier, count]) => ({ carrier, pieces: count }))
      .sort((a, b) => byId(a.carrier, b.carrier)),
  };
}

const countOf = (kind: 'lost' | 'dropped', events: readonly SupplyEvent[]): number =>
  events.reduce((sum, { what }) => (what.kind === kind ? sum + what.count : sum), 0);

/** Pieces earned, by what `keyOf` says of their strokes; a stroke of which it says nothing is left out. */
function earnedBy<Key>(
  events: readonly SupplyEvent[],
  keyOf: (event: SupplyEvent) => Key | undefined,
): [Key, number][] {
  const earned = new Map<Key, number>();
  for (const event of events) {
    const key = keyOf(event);
    if (key === undefined || event.what.kind !== 'earned') continue;
    earned.set(key, (earned.get(key) ?? 0) + event.what.count);
  }
  return [...earned];
}
