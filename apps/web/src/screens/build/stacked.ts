// A list of pieces as a tower, one on the other.

import type { Bench, Pieces } from '@cairnmark/editing';
import { edit } from '@cairnmark/editing';

export function stacked(kinds: readonly string[], bench: Bench): Pieces {
  let pieces: Pieces = [];
  for (const kind of kinds) {
    const added = edit(pieces, { do: 'add', kind }, bench);
    if (added.ok) pieces = added.value.pieces;
  }
  return pieces;
}
