// The pieces of a build, kind by kind: how many were used, and whether the kit has as many.

import type { Layout } from '@cairnmark/geometry';
import type { Kit, ReportedFact, StockBreach } from '../types.ts';
import { kindFactId } from './ids.ts';

/** A fact for every kind of the kit: the number of pieces used. Not measured when no pieces are listed at all. */
export function kindFacts(layout: Layout, kit: Kit): ReportedFact[] {
  const used = piecesUsed(layout);
  return kit.kinds.map(({ id }) => ({
    id: kindFactId(id),
    unit: 'count',
    value: used.length === 0 ? null : timesIn(used, id),
    tolerance: 0,
    source: used.length === 0 ? null : 'predicted',
    predicted: null,
    observed: null,
    decided: null,
  }));
}

/** The kinds of which more pieces were used than the kit has. */
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
