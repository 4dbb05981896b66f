// Traced places are a millimetre out. Of two pieces that stand side by side the later one would then come to lie on the other:
// what overlaps by so little is moved until it only touches. Frame of the table, mm.

import type { Outline, PlacedPiece, Vec2 } from '@cairnmark/geometry';
import { planOverlapDepth, SIDE_BY_SIDE_MM } from '@cairnmark/geometry';

/** mm. Two traced pieces are each a millimetre out (p95), and paper bulges. */
export const MOST_PUSH_MM = 3;

/** How far the piece has to move so that it touches what it overlaps a little. What it overlaps deeply stays as it is. */
export function pushApart(piece: PlacedPiece, others: readonly PlacedPiece[]): Vec2 {
  const beside = others.filter(({ topMm, bottomMm }) => topMm > piece.bottomMm + LEVEL_MM && bottomMm < piece.topMm);
  let move: Vec2 = [0, 0];
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const here = movedBy(piece.outline, move);
    const deepest = beside
      .map(({ outline }) => ({ outline, depthMm: planOverlapDepth(here, outline) }))
      .filter(({ depthMm }) => depthMm > SIDE_BY_SIDE_MM / 2 && depthMm <= MOST_PUSH_MM)
      .sort((a, b) => b.depthMm - a.depthMm)[0];
    if (deepest === undefined) return move;
    const away = wayOut(here, deepest.outline, deepest.depthMm);
    move = [move[0] + away[0] * deepest.depthMm, move[1] + away[1] * deepest.depthMm];
  }
  return move;
}

/** mm. What ends this little above where the piece begins is below it, not beside it. */
const LEVEL_MM = 1;
/** A piece in a corner touches two others; pushed off one it may meet the other again. */
const MOST_ROUNDS = 8;

/** The direction in which the overlap becomes less quickest: its slope, by small steps to either side. */
function wayOut(upper: Outline, lower: Outline, depthMm: number): Vec2 {
  const depthAt = (by: Vec2): number => planOverlapDepth(movedBy(upper, by), lower);
  const step = Math.min(STEP_MM, depthMm / 4);
  const [x, y] = [depthAt([-step, 0]) - depthAt([step, 0]), depthAt([0, -step]) - depthAt([0, step])];
  const length = Math.hypot(x, y);
  return length === 0 ? [1, 0] : [x / length, y / length];
}

const STEP_MM = 0.01;

const movedBy = (outline: Outline, [x, y]: Vec2): Outline =>
  outline.kind === 'disc'
    ? { ...outline, centre: [outline.centre[0] + x, outline.centre[1] + y] }
    : { ...outline, points: outline.points.map(([px, py]): Vec2 => [px + x, py + y]) };
