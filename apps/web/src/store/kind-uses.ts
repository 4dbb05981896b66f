// What still names a kind of piece, so that it cannot be taken out of a kit.

import type { Challenge, ClassRecord } from '@cairnmark/engine';
import { kitUse } from './kit-scope.ts';

export type KindUse =
  | 'last' // a kit has at least one kind
  | 'supply' // strokes on the supply lists
  | 'rule'
  | 'points'
  | 'ranking'
  | 'hidden'; // it is among what is not shown

export interface NamedBy {
  readonly use: KindUse;
  /** Name of the challenge. */
  readonly challenge: string;
}

/** Everything that names the kind, in the challenges that would lose it. */
export function usesOfKind(record: ClassRecord, at: Challenge, kind: string): readonly NamedBy[] {
  return kitUse(record, at).usedBy.flatMap((challenge) =>
    usesIn(record, challenge, kind).map((use) => ({ use, challenge: challenge.name })),
  );
}

function usesIn(record: ClassRecord, challenge: Challenge, kind: string): readonly KindUse[] {
  const { requirements, points, ranking, hidden, kit } = challenge;
  const measure = `kind:${kind}`;
  const strokes = record.supplies[challenge.id] ?? [];
  const uses: readonly (readonly [KindUse, boolean])[] = [
    ['last', kit.kinds.every(({ id }) => id === kind)],
    ['supply', strokes.some(({ what }) => what.kind !== 'penalty' && what.piece === kind)],
    [
      'rule',
      requirements.some(
        (rule) =>
          (rule.kind === 'only-kinds' && rule.kinds.includes(kind)) ||
          (rule.kind === 'measured' && rule.measure === measure),
      ),
    ],
    ['points', points.some((row) => row.measure === measure)],
    ['ranking', [ranking.first, ...ranking.tieBreaks].some(({ by }) => by === measure)],
    ['hidden', hidden.includes(measure)],
  ];
  return uses.flatMap(([use, named]) => (named ? [use] : []));
}
