// Pieces that stand side by side are traced a little into each other or apart. Where one stands in the other by less than the
// tracing may be off, both move until they only touch, each by its share of the doubt: so that a layout dropped anew comes
// to stand as it was traced.

import type { LaidPiece, PlacedPiece, Vec2 } from '@cairnmark/geometry';
import { CONTACT_MM, placePiece, planOverlapDepth } from '@cairnmark/geometry';
import { CLEAR_MM } from '../tolerance.ts';
import { besideMm } from './beside.ts';

export interface Traced {
  readonly laid: LaidPiece;
  readonly placed: PlacedPiece;
  /** mm2. How well its spot is known. */
  readonly spotVarianceMm2: number;
}

/** The same pieces in their order, moved where that was called for. Pieces deeper in each other stay as they are. */
export function makeRoom<T extends Traced>(pieces: readonly T[]): readonly T[] {
  const moved = [...pieces];
  const pairs = besideEachOther(pieces);
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    let still = true;
    for (const [i, j] of pairs) {
      const [a, b] = [moved[i], moved[j]];
      if (a === undefined || b === undefined) continue;
      const depthMm = planOverlapDepth(a.placed.outline, b.placed.outline);
      if (depthMm <= 0 || depthMm > besideMm(a.spotVarianceMm2, b.spotVarianceMm2)) continue;
      const [x, y] = wayOut(a, b);
      const share = a.spotVarianceMm2 / (a.spotVarianceMm2 + b.spotVarianceMm2);
      const way = depthMm + CLEAR_MM;
      moved[i] = shifted(a, [share * way * x, share * way * y]);
      moved[j] = shifted(b, [(share - 1) * way * x, (share - 1) * way * y]);
      still = false;
    }
    if (still) break;
  }
  return moved;
}

/** Each round halves what is left where three stand in a row; a ring of eight is clear after about ten. */
const MOST_ROUNDS = 60;

/** Pairs that share some height: of others, one may stand on the other. */
function besideEachOther(pieces: readonly Traced[]): readonly (readonly [number, number])[] {
  return pieces.flatMap(({ placed: a }, i) =>
    pieces.slice(0, i).flatMap(({ placed: b }, j) => {
      const shared = Math.min(a.topMm, b.topMm) - Math.max(a.bottomMm, b.bottomMm);
      return shared > CONTACT_MM ? [[i, j] as const] : [];
    }),
  );
}

/** The direction, of length 1, in which the first leaves the second soonest: where the depth falls fastest. */
function wayOut(a: Traced, b: Traced): Vec2 {
  const depth = (by: Vec2): number => planOverlapDepth(shifted(a, by).placed.outline, b.placed.outline);
  const x = depth([-SMALL_MM, 0]) - depth([SMALL_MM, 0]);
  const y = depth([0, -SMALL_MM]) - depth([0, SMALL_MM]);
  const length = Math.hypot(x, y);
  return length > 0 ? [x / length, y / length] : [1, 0];
}

const SMALL_MM = 1e-3;

function shifted<T extends Traced>(piece: T, [dx, dy]: Vec2): T {
  const { placed } = piece;
  const laid = { ...piece.laid, xMm: piece.laid.xMm + dx, yMm: piece.laid.yMm + dy };
  const moved = placePiece({ laid, solid: placed.solid, resting: placed.resting }, placed.index, placed.bottomMm);
  return { ...piece, laid, placed: moved };
}
