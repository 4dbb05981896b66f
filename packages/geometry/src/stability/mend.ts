// The smallest move that mends a build: one piece, with all that stands on it, to the left, right, front or back by
// whole ruler divisions, until the build is judged good. Every candidate is dropped and judged anew, so a move that only
// seems to help is never offered; one that lets a piece drop to another level is no mend. Lengths in mm.

import { SAME_LEVEL_MM } from '../kernel/tolerance.ts';
import type { Vec2 } from '../kernel/vec.ts';
import type { LaidPiece, Stack } from '../stack/types.ts';
import type { Look } from './over-ground.ts';
import type { Shift, ShiftRange } from './shift-range.ts';

export type Side = 'left' | 'right' | 'front' | 'back';

export interface Mend {
  /** The piece to take hold of. */
  readonly piece: number;
  /** It and all that stands on it, directly or not. */
  readonly moved: readonly number[];
  readonly side: Side;
  readonly byMm: number;
}

/** The stack that a layout drops to, and whether it is good; null when the layout is refused. */
export type Trial = (pieces: readonly LaidPiece[]) => { readonly stack: Stack; readonly isGood: () => boolean } | null;

export interface MendSearch {
  readonly pieces: readonly LaidPiece[];
  readonly stack: Stack;
  /** Pieces that may be taken hold of. */
  readonly candidates: readonly number[];
  readonly rulerStepMm: number;
  readonly furthestMm: number;
  /** Whether pieces that move could come to lie on pieces that stay, or the other way round. */
  readonly meets: (moved: readonly number[]) => boolean;
  /** A quick look at a move before it is tried. */
  readonly couldHelp: Look;
  /** The lengths among which a move can be found; null: no length will do. */
  readonly rangeOf: (shift: Shift) => ShiftRange | null;
  /**
   * Work at the most; the search gives up after that. Judging a layout of up to a dozen pieces costs 1, a larger one as the
   * square of its pieces; a look is a small part of that.
   */
  readonly trials: number;
}

/** The shortest such move; among equals the earlier candidate, then left, right, front, back. null: none was found. */
export function shortestMend(search: MendSearch, trial: Trial): Mend | null {
  const { pieces, stack, rulerStepMm } = search;
  const hopes = search.candidates.flatMap((piece) => {
    const moved = withAllOn(stack, piece);
    const meets = search.meets(moved);
    return SIDES.flatMap(([side, towards]): readonly Hope[] => {
      const range = search.rangeOf({ piece, moved, towards, meets });
      return range === null ? [] : [{ piece, moved, side, towards, meets, range }];
    });
  });
  const furthestMm = Math.min(search.furthestMm, Math.max(...hopes.map(({ range }) => range.mostMm)));
  const dozens = Math.max(1, pieces.length / 12);
  let left = search.trials;
  for (let steps = 1; steps * rulerStepMm <= furthestMm; steps += 1) {
    const byMm = steps * rulerStepMm;
    for (const { piece, moved, side, towards, meets, range } of hopes) {
      if (byMm < range.leastMm || byMm > range.mostMm) continue;
      if (left <= 0) return null;
      left -= LOOK * dozens;
      if (!search.couldHelp({ piece, moved, towards, meets }, byMm)) continue;
      left -= dozens ** 2;
      const outcome = trial(shifted(pieces, moved, towards, byMm));
      if (outcome !== null && sameLevels(stack, outcome.stack) && outcome.isGood()) return { piece, moved, side, byMm };
    }
  }
  return null;
}

/** Share of the work of judging a dozen pieces: a look is some hundred times cheaper. */
const LOOK = 1 / 200;

/** A move that could help, with the lengths that could. */
interface Hope extends Shift {
  readonly side: Side;
  readonly range: ShiftRange;
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
