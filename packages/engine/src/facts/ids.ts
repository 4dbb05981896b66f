// The names of facts: the measures of geometry; how long it stood, the tilt it stands to, full sets of pieces; `kind:`
// with the id of a kind of piece, `judged:` with that of a criterion, `earned:` with what a supply counts.

import type { Unit } from '@cairnmark/geometry';
import { MEASURES } from '@cairnmark/geometry';
import { SUPPLY_FACT_IDS } from '@cairnmark/scoring';
import type { Challenge } from '../types.ts';

/** The points as something to rank by; no fact of a build. */
export const POINTS_ID = 'points';
/** Seconds that the build was seen to stand. */
export const STOOD_ID = 'stood-seconds';
/** The tilt of the table up to which it stands, rad: what statics say of it, or a person decided. */
export const TILT_ID = 'stands-to';
/** How often the build holds one piece of every kind of the kit. */
export const SETS_ID = 'full-sets';

export const kindFactId = (kind: string): string => `kind:${kind}`;
export const judgedFactId = (criterion: string): string => `judged:${criterion}`;

/** The unit of a fact or of the points. What was not measured with a ruler, a clock or a slope is a count. */
export const unitOf = (id: string): Unit => UNITS.get(id) ?? 'count';

const UNITS: ReadonlyMap<string, Unit> = new Map<string, Unit>([
  ...MEASURES.map(({ id, unit }): [string, Unit] => [id, unit]),
  [STOOD_ID, 's'],
  [TILT_ID, 'rad'],
]);

/** What a person may decide: everything that is read or worked out, nothing that is listed or judged. */
export const DECIDABLE: ReadonlySet<string> = new Set([...MEASURES.map(({ id }) => id), STOOD_ID, TILT_ID]);

/** Every fact that a report on this challenge holds. */
export function factIds(challenge: Challenge): ReadonlySet<string> {
  return new Set([
    ...DECIDABLE,
    SETS_ID,
    ...challenge.kit.kinds.map(({ id }) => kindFactId(id)),
    ...challenge.criteria.map(({ id }) => judgedFactId(id)),
    ...(challenge.supply === null ? [] : SUPPLY_FACT_IDS),
  ]);
}
