// Standard competition places: 1 plus the number of those who are strictly better, so 100, 90, 90, 80 give 1, 2, 2, 4.
// Equals stand in the list by group id, so that it looks the same each time; that has no influence on any place.

interface Named {
  readonly group: string;
}

export interface Placed<T> {
  readonly item: T;
  readonly place: number;
  /** The others at the same place. */
  readonly sharedWith: readonly T[];
}

/** The items with their places, the best first. `compare(a, b)` is negative when `a` is better, 0 when they are equal. */
export function places<T extends Named>(items: readonly T[], compare: (a: T, b: T) => number): Placed<T>[] {
  const ordered = [...items].sort((a, b) => compare(a, b) || byGroup(a, b));
  return runsOfEquals(ordered, compare).flatMap(({ better, equals }) =>
    equals.map((item) => ({ item, place: better + 1, sharedWith: equals.filter((other) => other !== item) })),
  );
}

/** Order of a list, never of a ranking: by group id, character by character, the same on every machine. */
export const byGroup = (a: Named, b: Named): number => byId(a.group, b.group);
export const byId = (a: string, b: string): number => (a < b ? -1 : Number(a > b));

interface Run<T> {
  /** How many items stand before it. */
  readonly better: number;
  readonly equals: readonly T[];
}

function runsOfEquals<T>(ordered: readonly T[], compare: (a: T, b: T) => number): Run<T>[] {
  const runs: { better: number; equals: T[] }[] = [];
  let first: T | undefined;
  ordered.forEach((item, better) => {
    const run = runs.at(-1);
    if (run !== undefined && first !== undefined && compare(first, item) === 0) {
      run.equals.push(item);
    } else {
      runs.push({ better, equals: [item] });
      first = item;
    }
  });
  return runs;
}
