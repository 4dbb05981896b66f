// Where the dots of a line plot stand, and the names on poles above them. px throughout, x to the right, y up from the ruler.

/** The row of each dot, counted from 0: the lowest in which it lies on no dot before it. `xs` from left to right. */
export function dotRows(xs: readonly number[], apartPx: number): readonly number[] {
  const ends: number[] = [];
  return xs.map((x) => {
    const free = ends.findIndex((end) => x - end >= apartPx);
    const row = free < 0 ? ends.length : free;
    ends[row] = x;
    return row;
  });
}

export interface Flag {
  readonly x: number;
  /** Of its text, which begins at the pole and goes to the right. */
  readonly widthPx: number;
}

/**
 * The level of each flag, counted from 0 for the lowest: a text goes past every pole to its right that it would cross, above
 * the flags of these. `flags` from left to right.
 */
export function flagLevels(flags: readonly Flag[], gapPx: number): readonly number[] {
  const levels = new Array<number>(flags.length).fill(0);
  for (let k = flags.length - 1; k >= 0; k -= 1) {
    const flag = flags[k];
    if (flag === undefined) continue;
    const crossed = flags.flatMap(({ x }, j) => (j > k && x < flag.x + flag.widthPx + gapPx ? [levels[j] ?? 0] : []));
    levels[k] = crossed.length === 0 ? 0 : Math.max(...crossed) + 1;
  }
  return levels;
}
