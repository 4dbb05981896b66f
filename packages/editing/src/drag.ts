// What the scene asks at every move of the pointer: where would the piece settle? All that does not change on the way is
// found once, when it is taken up. mm.

import type { LaidPiece, PlacedPiece, Result } from '@cairnmark/geometry';
import { success } from '@cairnmark/geometry';
import type { InHand } from './in-hand.ts';
import { takeUp } from './in-hand.ts';
import type { Settled } from './settle-at.ts';
import { settleAt } from './settle-at.ts';
import type { Bench, EditIssue, FromShelf, Pieces, Spot } from './types.ts';

/** Where a piece would settle if it were let go, and the build that this would give. */
export interface Ghost {
  readonly piece: LaidPiece;
  /** The same with its body and outline, for drawing; its own index is that of a piece after all others. */
  readonly placed: PlacedPiece;
  /** Its place in the new building order. */
  readonly index: number;
  readonly bottomMm: number;
  readonly topMm: number;
  /** What it rests on, numbered as before the drag. */
  readonly restsOn: readonly (number | 'table')[];
  /** True when it comes earlier in the building order than it was (a new piece: than last), to get under another. */
  readonly earlier: boolean;
  /** The layout with the piece there: what `add-at` or `move-to` gives for the same spot. */
  readonly pieces: Pieces;
}

export interface Drag {
  /** The pieces that stay, in order; all of them when the piece comes from the shelf, or cannot be taken up. */
  readonly others: Pieces;
  /** Where it settles, or why it cannot be put there at all. */
  at(spot: Spot): Result<Ghost, EditIssue>;
}

/** Takes up the piece of this number, or one from the shelf, for a drag over the build. */
export function dragOf(pieces: Pieces, what: number | FromShelf, bench: Bench): Drag {
  const hand = takeUp(pieces, what, bench);
  if (!hand.ok) return { others: pieces, at: () => hand };
  const others = hand.value.staying.map(({ entry }) => entry.laid);
  return {
    others,
    at: (spot) => {
      const settled = settleAt(hand.value, spot, bench);
      return settled.ok ? success(ghostOf(settled.value, hand.value, others)) : settled;
    },
  };
}

/** The same for a single spot. */
export const settle = (pieces: Pieces, what: number | FromShelf, spot: Spot, bench: Bench): Result<Ghost, EditIssue> =>
  dragOf(pieces, what, bench).at(spot);

function ghostOf({ laid, placed, index, landing }: Settled, { was, staying }: InHand, others: Pieces): Ghost {
  const numberBefore = (lower: number): number => staying[lower]?.entry.was ?? lower;
  return {
    piece: laid,
    placed,
    index,
    bottomMm: placed.bottomMm,
    topMm: placed.topMm,
    restsOn: landing.supports.map(({ lower }) => (lower === 'table' ? lower : numberBefore(lower))),
    earlier: index < (was ?? staying.length),
    pieces: [...others.slice(0, index), laid, ...others.slice(index)],
  };
}
