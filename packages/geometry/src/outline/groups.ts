// Things that are joined two by two, told apart by group (disjoint sets, Galler and Fischer 1964).

export interface Groups {
  readonly join: (i: number, j: number) => void;
  /** One number for all members of a group: the index of one of them. */
  readonly groupOf: (i: number) => number;
}

/** Each of `count` things in a group of its own. */
export function groupsOf(count: number): Groups {
  const above = Array.from({ length: count }, (_, i) => i);
  const groupOf = (i: number): number => {
    let at = i;
    for (;;) {
      const up = above[at] ?? at;
      if (up === at) return at;
      above[at] = above[up] ?? up;
      at = up;
    }
  };
  const join = (i: number, j: number): void => {
    above[groupOf(i)] = groupOf(j);
  };
  return { join, groupOf };
}
