// How a class reads a build: its ruler, and its own names for kinds of piece, criteria and groups.

import type { Ruler, Unit } from '@cairnmark/geometry';

export interface Reader {
  readonly ruler: Ruler;
  /** Unit of a measure or of `judged:` and a criterion. */
  readonly unitOf: (measure: string) => Unit;
  /** Names by id; an id without a name may stand for itself. */
  readonly kindName: (kind: string) => string;
  readonly criterionName: (criterion: string) => string;
  readonly groupName: (group: string) => string;
}
