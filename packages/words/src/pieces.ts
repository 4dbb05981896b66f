// Pieces of a build by name: their kind, and their number in building order, counted from 1.

import { listed } from './amounts.ts';
import { fill } from './say.ts';
import type { Voice } from './voice.ts';

/** Kind ids of the pieces of a build, in building order. */
export type Kinds = readonly string[];

/** "the cone (piece 5)", "the table". Throws RangeError for a piece that the build has not. */
export function pieceName(piece: number | 'table', kinds: Kinds, { words, reader }: Voice): string {
  if (piece === 'table') return words.stability.table;
  const kind = kinds[piece];
  if (kind === undefined) throw new RangeError(`no piece ${piece} in a build of ${kinds.length}`);
  return fill(words.stability.piece, { kind: reader.kindName(kind), number: piece + 1 });
}

/** "the cube (piece 4) and the cone (piece 5)". */
export function pieceNames(pieces: readonly number[], kinds: Kinds, voice: Voice): string {
  return listed(
    pieces.map((piece) => pieceName(piece, kinds, voice)),
    voice.words.and,
  );
}
