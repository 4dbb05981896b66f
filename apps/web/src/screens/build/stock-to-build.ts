// How many pieces of each kind a group may build with: what the class has whole, or what the group earned where a build may hold
// nothing else. Where more than that only costs points, the group may take it and pay.

import type { Challenge, Group } from '@cairnmark/engine';
import { wholePieces } from '@cairnmark/engine';
import type { SupplyEvent } from '@cairnmark/scoring';
import { piecesOf } from '@cairnmark/scoring';

export function stockToBuild(
  challenge: Challenge,
  group: Group,
  events: readonly SupplyEvent[],
): ReadonlyMap<string, number> {
  const earned = onlyEarned(challenge) ? piecesOf(events, group.id) : null;
  return new Map(
    challenge.kit.kinds.map((kind) => [kind.id, earned === null ? wholePieces(kind) : (earned.get(kind.id) ?? 0)]),
  );
}

const onlyEarned = ({ requirements }: Challenge): boolean =>
  requirements.some(({ kind, consequence }) => kind === 'only-earned' && consequence.kind === 'must');
