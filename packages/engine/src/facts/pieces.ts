// The pieces of a build, kind by kind: how many were used, how many full sets, and whether the kit has as many.

import type { Layout } from '@cairnmark/geometry';
import type { Pieces } from '@cairnmark/scoring';
import type { ReportedFact, StockBreach } from '../report-types.ts';
import type { KindOfPiece, Kit } from '../types.ts';
import { plainFact } from './fact.ts';
import { kindFactId, SETS_ID } from './ids.ts';

/** A fact for every kind of the kit, and the full sets of them. Not measured when no pieces are listed at all. */
export function kindFacts(layout: Layout, kit: Kit): ReportedFact[] {
  const used = usedByKind(layout, kit);
  const counts = used === null ? [] : Object.values(used);
  return [
    ...kit.kinds.map(({ id }) => plainFact(kindFactId(id), used === null ? null : (used[id] ?? 0), 'predicted')),
    plainFact(SETS_ID, counts.length === 0 ? null : Math.min(...counts), 'predicted'),
  ];
}

/** Pieces used of every kind of the kit; null when none are listed. */
export function usedByKind(layout: Layout, kit: Kit): Pieces {
  const used = piecesUsed(layout);
  return used.length === 0 ? null : Object.fromEntries(kit.kinds.map(({ id }) => [id, timesIn(used, id)]));
}

/** Pieces that can be built with now. A build is judged by all that were made: crushing one changes no old result. */
export const wholePieces = ({ stock, crushed = 0 }: Pick<KindOfPiece, 'stock' | 'crushed'>): number => stock - crushed;

/** The kinds of which more pieces were used than the class has made. */
export function stockBreaches(layout: Layout, kit: Kit): StockBreach[] {
  const used = piecesUsed(layout);
  return kit.kinds
    .map(({ id, stock }) => ({ kind: id, used: timesIn(used, id), stock }))
    .filter((kind) => kind.used > kind.stock);
}

/** Kind ids, one entry a piece. */
export function piecesUsed(layout: Layout): readonly string[] {
  return layout.kind === 'laid-out' ? layout.pieces.map(({ kind }) => kind) : layout.pieces;
}

const timesIn = (used: readonly string[], id: string): number => used.filter((kind) => kind === id).length;
