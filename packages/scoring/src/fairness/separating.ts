// The fewest pieces to show.

/**
 * The smallest set of positions below `count` that has one of every list; of equally small ones the one that stands first.
 * Empty lists are left out: nothing tells those apart.
 */
export function fewestThatTell(lists: readonly (readonly number[])[], count: number): readonly number[] {
  const distinct = [...new Map(lists.map((list) => [list.join(), list])).values()].filter((list) => list.length > 0);
  // A list that holds all of another is met wherever the other is.
  const needed = distinct.filter((list) => !distinct.some((one) => one !== list && one.every((k) => list.includes(k))));
  for (let size = 0; size <= count; size += 1) {
    const found = meeting(needed, size, 0, count);
    if (found !== null) return found;
  }
  return [];
}

/** So many positions from `from` on that meet every list, or null. */
function meeting(
  lists: readonly (readonly number[])[],
  size: number,
  from: number,
  count: number,
): readonly number[] | null {
  if (lists.length === 0) return [];
  if (size === 0 || lists.some((list) => (list.at(-1) ?? -1) < from)) return null;
  for (let k = from; k < count; k += 1) {
    const left = lists.filter((list) => !list.includes(k));
    if (left.length === lists.length) continue;
    const rest = meeting(left, size - 1, k + 1, count);
    if (rest !== null) return [k, ...rest];
  }
  return null;
}
