// How many pieces of each kind are left on the shelf.

import type { Bench, EditIssue, Pieces } from './types.ts';

/** Pieces left of every kind of the bench, in its order; below 0 where a layout uses more than there are. */
export function stockLeft(pieces: Pieces, { solids, stock }: Bench): ReadonlyMap<string, number> {
  const left = new Map([...solids.keys()].map((kind) => [kind, stock.get(kind) ?? 0]));
  for (const { kind } of pieces) left.set(kind, (left.get(kind) ?? 0) - 1);
  return left;
}

/** Why one more piece of a kind cannot be had; null when it can. */
export function noneLeft(pieces: Pieces, bench: Bench, kind: string): EditIssue | null {
  if (!bench.solids.has(kind)) return { code: 'kind-unknown', path: ['kind'], details: { kind } };
  if ((stockLeft(pieces, bench).get(kind) ?? 0) > 0) return null;
  return { code: 'none-left', path: ['kind'], details: { kind, stock: bench.stock.get(kind) ?? 0 } };
}
