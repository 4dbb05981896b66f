// How high any build of level pieces can reach. From its highest piece go down to a piece that carries it, and so on to the
// table; no piece begins higher than one that carries it ends, so that the heights along this chain sum to no less than the
// build's. A piece that cannot be all that carries another has a second one beside it. Among several that carry the same piece
// take one that stands on none of the others: then such a second one is not on the chain, and no two of them are the same.

import type { BestTask } from './types.ts';

/** mm. Holds for centred towers and for all other builds of these pieces; rules on ground and tilt are left out. */
export function ceilingMm({ kinds, pieces }: BestTask): number {
  const stock = kinds.reduce((sum, kind) => sum + kind.stock, 0);
  const most = Math.min(pieces.most, stock);
  // [with a top yet?][pieces taken]: the greatest height so far.
  let without = emptyRow(most);
  let withTop = emptyRow(most).fill(Number.NEGATIVE_INFINITY);
  for (const { stock: count, mostHeightMm, aloneHeightMm } of kinds) {
    for (let piece = 0; piece < Math.min(count, most); piece += 1) {
      const [before, topped] = [without, withTop];
      const lower = (row: readonly number[], taken: number): number =>
        Math.max(
          row[taken] ?? 0,
          aloneHeightMm > 0 ? at(row, taken - 1) + aloneHeightMm : Number.NEGATIVE_INFINITY,
          at(row, taken - 2) + mostHeightMm,
        );
      without = before.map((_, taken) => lower(before, taken));
      withTop = topped.map((_, taken) => Math.max(lower(topped, taken), at(before, taken - 1) + mostHeightMm));
    }
  }
  return Math.max(...withTop);
}

const emptyRow = (most: number): number[] => [0, ...Array.from({ length: most }, () => Number.NEGATIVE_INFINITY)];

const at = (row: readonly number[], taken: number): number =>
  taken < 0 ? Number.NEGATIVE_INFINITY : (row[taken] ?? 0);
