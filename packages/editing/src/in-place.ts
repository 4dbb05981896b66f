// Changes to pieces that keep their place in the building order; what stood on them comes along as far as it still stands
// on them, and drops where it does not.

import type { LaidPiece, Result } from '@cairnmark/geometry';
import { failure } from '@cairnmark/geometry';
import { dropInOrder, entriesOf, finish } from './draft.ts';
import { missingPiece } from './missing.ts';
import type { Bench, Edited, EditIssue, Pieces } from './types.ts';

/** The layout with each of these pieces changed. */
export function change(
  pieces: Pieces,
  which: readonly number[],
  to: (laid: LaidPiece) => LaidPiece,
  bench: Bench,
): Result<Edited, EditIssue> {
  const missing = which.filter((piece) => pieces[piece] === undefined);
  if (missing.length > 0) return failure(missing.map((piece) => missingPiece(pieces, piece)));
  const entries = entriesOf(pieces).map((entry, index) =>
    which.includes(index) ? { ...entry, laid: to(entry.laid), worked: true } : entry,
  );
  return finish(pieces, dropInOrder(entries, bench), false);
}
