// The smallest move that mends a build: one piece, with all that stands on it, to the left, right, front or back by
// whole ruler divisions, until the build is judged good. Every candidate is dropped and judged anew, so a move that only
// seems to help is never offered; one that lets a piece drop to another level is no mend. Lengths in mm.

import { SAME_LEVEL_MM } from '../kernel/tolerance.ts';
import type { Vec2 } from '../kernel/vec.ts';
import type { LaidPiece, Stack } from '../stack/types.ts';

export type Side = 'left' | 'right' | 'front' | 'back';

export interface Mend {
  /** The piece to take hold of. */
  readonly piece: number;
  /** It and all that stands on it, directly or not. */
  readonly moved: readonly number[];
  readonly side: Side;
  readonly byMm: number;
}

/** The stack that a layout drops to and whether it is good, or null when the layout is refused or not decided. */
export type Trial = (pieces: readonly LaidPiece[]) => { readonly stack: Stack; readonly good: boolean } | null;

export interface MendSearch {
  readonly pieces: readonly LaidPiece[];
  readonly stack: Stack;
  /** Pieces that may be taken hold of. */
  readonly candidates: readonly number[];
  readonly rulerStepMm: number;
  readonly furthestMm: number;
  /** Layouts judged at the most; the search gives up after that. */
  readonly trials: number;
}

/** The shortest such move; among equals the earlier candidate, then left, right, front, back. null: none was found. */
export function shortestMend(search: MendSearch, trial: Trial): Mend | null {
  const { pieces, stack, rulerStepMm } = search;
  const holds = search.candidates.map((piece) => ({ piece, moved: withAllOn(stack, piece) }));
  let left = search.trials;
  for (let steps = 1; steps * rulerStepMm <= search.furthestMm; steps += 1) {
    const byMm = steps * rulerStepMm;
    for (const { piece, moved } of holds) {
      for (const [side, towards] of SIDES) {
        if (left === 0) return null;
        left -= 1;
        const outcome = trial(shifted(pieces, moved, towards, byMm));
        if (outcome?.good === true && sameLevels(stack, outcome.stack)) return { piece, moved, side, byMm };
      }
    }
  }
  return null;
}

/** The layout after the move. */
export function moveBy(pieces: readonly LaidPiece[], { moved, side, byMm }: Mend): readonly LaidPiece[] {
  const [, towards] = SIDES.find(([name]) => name === side) ?? LEFT;
  return shifted(pieces, moved, towards, byMm);
}

/** A piece and all that rests on it, directly or not, in building order. */
export function withAllOn(stack: Stack, piece: number): readonly number[] {
  const moved = new Set([piece]);
  let before = 0;
  while (moved.size > before) {
    before = moved.size;
    for (const { upper, lower } of stack.supports) if (lower !== 'table' && moved.has(lower)) moved.add(upper);
  }
  return [...moved].sort((a, b) => a - b);
}

const LEFT = ['left', [-1, 0]] as const;
const SIDES: readonly (readonly [Side, Vec2])[] = [LEFT, ['right', [1, 0]], ['front', [0, -1]], ['back', [0, 1]]];

function shifted(
  pieces: readonly LaidPiece[],
  moved: readonly number[],
  [x, y]: Vec2,
  byMm: number,
): readonly LaidPiece[] {
  return pieces.map((piece, i) =>
    moved.includes(i) ? { ...piece, xMm: piece.xMm + x * byMm, yMm: piece.yMm + y * byMm } : piece,
  );
}

function sameLevels(before: Stack, after: Stack): boolean {
  return before.pieces.every((piece, i) => {
    const now = after.pieces[i]?.bottomMm ?? Number.NaN;
    return Math.abs(piece.bottomMm - now) <= SAME_LEVEL_MM;
  });
}
