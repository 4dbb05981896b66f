// The list of pieces of a build of which nothing is drawn: how many of each kind.

import { piecesUsed } from '@cairnmark/engine';
import { useSession } from '../../store/use-session.ts';
import type { At } from '../../store/where-at.ts';
import { NO_STROKES } from '../../workers/use-engine.ts';
import { stockToBuild } from './stock-to-build.ts';

export interface NumbersPieces {
  /** Pieces of each kind that may still be used. */
  readonly left: ReadonlyMap<string, number>;
  readonly used: ReadonlyMap<string, number>;
  add(kind: string): void;
  remove(kind: string): void;
}

/** A drawn build has its pieces from the drawing: adding to its list changes nothing. */
export function useNumbersPieces({ attempt, challenge, group, record }: At): NumbersPieces {
  const layOut = useSession((session) => session.layOut);
  const layout = attempt?.layout;
  const drawn = layout !== undefined && layout.kind !== 'numbers-only' && layout.pieces.length > 0;
  const pieces = layout === undefined ? [] : piecesUsed(layout);
  const used = countsOf(pieces);
  const stock = stockToBuild(challenge, group, record.supplies[challenge.id] ?? NO_STROKES);
  const left = new Map([...stock].map(([id, count]) => [id, count - (used.get(id) ?? 0)]));
  return {
    used,
    left,
    add: (kind) => {
      if (!drawn && (left.get(kind) ?? 0) > 0) layOut({ kind: 'numbers-only', pieces: [...pieces, kind] });
    },
    remove: (kind) => {
      const last = pieces.lastIndexOf(kind);
      if (!drawn && last >= 0) layOut({ kind: 'numbers-only', pieces: pieces.filter((_, k) => k !== last) });
    },
  };
}

function countsOf(kinds: readonly string[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const kind of kinds) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  return counts;
}
