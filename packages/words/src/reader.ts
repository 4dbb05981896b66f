// How a class reads a build: its ruler, and its own names for kinds of piece, criteria and groups.

import type { Ruler, Unit } from '@cairnmark/geometry';

export interface Reader {
  readonly ruler: Ruler;
  /** Tilts that part the words of a verdict, rad: below `closeRad` too close to call, from `steadyRad` on steady. */
  readonly bands: { readonly closeRad: number; readonly steadyRad: number };
  /** Unit of a measure or of `judged:` and a criterion. */
  readonly unitOf: (measure: string) => Unit;
  /** Names by id; an id without a name may stand for itself. */
  readonly kindName: (kind: string) => string;
  readonly criterionName: (criterion: string) => string;
  readonly groupName: (group: string) => string;
}
