// Could a move make pieces carry each other that did not before? Only where one of them ends at the level at which the
// other begins. mm.

import { SAME_LEVEL_MM } from '../kernel/tolerance.ts';
import type { PlacedPiece, Stack } from '../stack/types.ts';

/** True when a piece that moves and one that stays, neither on the other yet, meet in height to within `slackMm`. */
export function couldMeet(stack: Stack, moved: readonly number[], slackMm: number): boolean {
  const moves = new Set(moved);
  const staying = stack.pieces.filter(({ index }) => !moves.has(index));
  const resting = new Set(stack.supports.map(({ upper, lower }) => `${upper} ${lower}`));
  const meets = (upper: PlacedPiece, lower: PlacedPiece): boolean =>
    Math.abs(upper.bottomMm - lower.topMm) <= slackMm + SAME_LEVEL_MM && !resting.has(`${upper.index} ${lower.index}`);
  return stack.pieces.some(
    (piece) => moves.has(piece.index) && staying.some((other) => meets(piece, other) || meets(other, piece)),
  );
}
