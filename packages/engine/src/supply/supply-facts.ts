// What a group earned in the supply game of a challenge, as facts that rows and rules may ask for.

import { makeSolid, schoolCounts } from '@cairnmark/geometry';
import type { PieceCounts, Supply, SupplyEvent } from '@cairnmark/scoring';
import { supplies, supplyFactValues } from '@cairnmark/scoring';
import { kindsOf } from '../evaluate/kinds.ts';
import { plainFact } from '../facts/fact.ts';
import type { ReportedFact } from '../report-types.ts';
import type { Challenge, Group, KindOfPiece } from '../types.ts';
import { stockOf } from './stock-of.ts';

/** null where the challenge has no supply game. A group without any stroke has earned nothing. */
export function supplyOf(events: readonly SupplyEvent[], challenge: Challenge, group: Group): Supply | null {
  if (challenge.supply === null) return null;
  const all = supplies(events, stockOf(challenge));
  return all.find((one) => one.group === group.id) ?? emptySupply(group.id);
}

export function supplyFacts(supply: Supply | null, challenge: Challenge, group: Group): ReportedFact[] {
  if (supply === null) return [];
  const kinds = pieceCounts(challenge, group);
  return Object.entries(supplyFactValues(supply, kinds)).map(([id, value]) => plainFact(id, value, 'observed'));
}

/** Faces, edges and corners of one piece of each kind of the kit, as the challenge counts them. */
export function pieceCounts(challenge: Challenge, group: Group): PieceCounts[] {
  const specs = kindsOf(challenge, group);
  return challenge.kit.kinds.map((kind) => countsOf(kind, specs, challenge));
}

const emptySupply = (group: string): Supply => ({
  group,
  pieces: {},
  dropped: 0,
  lost: 0,
  penaltyPoints: 0,
  byRound: [],
  byCarrier: [],
});

/** Faces, edges and corners of one piece, by the counting of the challenge. */
function countsOf({ id }: KindOfPiece, specs: ReturnType<typeof kindsOf>, { counting }: Challenge) {
  const spec = specs.get(id);
  const made = spec === undefined ? undefined : makeSolid(spec);
  if (made?.ok !== true) throw new RangeError(`unchecked sizes of ${id}`);
  const { flatFaces, curvedSurfaces } = made.value.counts;
  return { id, flatFaces, curvedSurfaces, ...schoolCounts(made.value.counts, counting) };
}
