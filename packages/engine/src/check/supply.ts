// Do the strokes of the supply lists of a challenge make sense: pieces of the kit, no more than the class has.

import type { SupplyEvent } from '@cairnmark/scoring';
import { supplyIssues } from '@cairnmark/scoring';
import { COUNT_MOST } from '../limits.ts';
import { stockOf } from '../supply/stock-of.ts';
import type { Challenge } from '../types.ts';
import type { Path } from './checks.ts';
import { idsTwice, outOfRange, pointsOutOfRange } from './checks.ts';
import type { EngineIssue } from './issues.ts';

/** Everything that is wrong with the events, which stand at `path`. Groups are looked up elsewhere. */
export function supplyEventIssues(events: readonly SupplyEvent[], challenge: Challenge, path: Path): EngineIssue[] {
  if (events.length === 0) return [];
  if (challenge.supply === null) return [{ code: 'supply-not-played', path, details: { challenge: challenge.id } }];
  const kinds = new Set(challenge.kit.kinds.map(({ id }) => id));
  const single = [...idsTwice(events, path), ...events.flatMap((event, k) => eventIssues(event, kinds, [...path, k]))];
  return single.length > 0 ? single : stockIssues(events, challenge, path);
}

function eventIssues({ what, round }: SupplyEvent, kinds: ReadonlySet<string>, path: Path): EngineIssue[] {
  const inRound = round === undefined ? [] : outOfRange(round, [...path, 'round'], 1, COUNT_MOST);
  if (what.kind === 'penalty') return [...inRound, ...pointsOutOfRange(what.points, [...path, 'what', 'points'])];
  return [
    ...inRound,
    ...(kinds.has(what.piece)
      ? []
      : [{ code: 'kind-unknown' as const, path: [...path, 'what', 'piece'], details: { kind: what.piece } }]),
    ...outOfRange(what.count, [...path, 'what', 'count'], 1, COUNT_MOST),
  ];
}

function stockIssues(events: readonly SupplyEvent[], challenge: Challenge, path: Path): EngineIssue[] {
  return supplyIssues(events, stockOf(challenge)).map(({ event, ...issue }): EngineIssue => {
    const { code, ...details } = issue;
    return { code, path: [...path, event], details };
  });
}
