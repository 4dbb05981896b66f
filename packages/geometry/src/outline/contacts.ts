// Which pieces touch which. Touching within the gap allowance joins, also at a point: a build whose boxes meet at a corner
// is one part.

import { groupsOf } from './groups.ts';

export interface Contacts {
  /** Told of two pieces that touch, and over what length of boundary; 0 at a point. */
  readonly touch: (i: number, j: number, overMm: number) => void;
  /** True for pieces that touch over more than a point: no link is needed between them. */
  readonly areJoined: (i: number, j: number) => boolean;
  /** The number of groups of pieces that touch, directly or by others. */
  readonly countParts: () => number;
}

/** The contacts of `count` pieces, none to begin with. A length up to `nodeMm` is a point. */
export function contactsOf(count: number, nodeMm: number): Contacts {
  const groups = groupsOf(count);
  const joined = new Set<number>();
  const pair = (i: number, j: number): number => Math.min(i, j) * count + Math.max(i, j);
  return {
    touch: (i, j, overMm) => {
      groups.join(i, j);
      if (overMm > nodeMm) joined.add(pair(i, j));
    },
    areJoined: (i, j) => joined.has(pair(i, j)),
    countParts: () => new Set(Array.from({ length: count }, (_, i) => groups.groupOf(i))).size,
  };
}
