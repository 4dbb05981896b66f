// The names of facts: the measures of geometry, `kind:` with the id of a kind of piece, `judged:` with that of a criterion.

import { MEASURES } from '@cairnmark/geometry';
import type { Challenge } from '../types.ts';

/** The points as something to rank by; no fact of a build. */
export const POINTS_ID = 'points';

export const kindFactId = (kind: string): string => `kind:${kind}`;
export const judgedFactId = (criterion: string): string => `judged:${criterion}`;

/** Every fact that a report on this challenge holds. */
export function factIds(challenge: Challenge): ReadonlySet<string> {
  return new Set([
    ...MEASURES.map(({ id }) => id),
    ...challenge.kit.kinds.map(({ id }) => kindFactId(id)),
    ...challenge.criteria.map(({ id }) => judgedFactId(id)),
  ]);
}
