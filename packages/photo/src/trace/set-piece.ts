// At which height a tapped piece stands, and where. Place and height hang together: seen from above, a piece that stands higher shows
// further from the middle. From every level that is there the piece is set and let down, until it stays where it is; of such
// places the one that fits its taps and the edges of the photo best is taken.

import type { PlacedPiece, Result } from '@cairnmark/geometry';
import { CONTACT_MM, failure, landOn, placePiece, planOverlapDepth, success } from '@cairnmark/geometry';
import type { PhotoIssue } from '../issues.ts';
import { issue } from '../issues.ts';
import { SAME_LEVEL_MM, SIZE_SIGMA_MM } from '../tolerance.ts';
import { besideMm, spotVariance } from './beside.ts';
import type { FittedSolid } from './fit-solid.ts';
import { fitSolid, worth } from './fit-solid.ts';
import type { TappedPiece, View } from './trace-tower.ts';

export interface SetPiece {
  readonly placed: PlacedPiece;
  readonly fit: FittedSolid;
}

/** The piece among those below it. */
export function setPiece(
  view: View,
  piece: TappedPiece,
  index: number,
  below: readonly PlacedPiece[],
): Result<SetPiece, PhotoIssue> {
  const starts = piece.on === 'table' ? [0] : levelsOf(below);
  const tried = starts.map((start) => settled(view, start, piece, index, below));
  // At a wrong height a piece of known size fits neither its taps nor the edges.
  const standing = tried.flatMap((one) => (one.ok ? [one] : []));
  const best = standing.sort((a, b) => worth(b.value.fit) - worth(a.value.fit))[0];
  return best ?? tried[0] ?? failure([NOT_CLEAR]);
}

const NOT_CLEAR = issue('level-not-clear', 'say-what-it-stands-on');

/** The table and the tops of all pieces. */
function levelsOf(below: readonly PlacedPiece[]): readonly number[] {
  return [...new Set([0, ...below.map(({ topMm }) => topMm)])];
}

/** From a height to the place there, from the place to the height at which it lands, and so on until both stay. */
function settled(
  { photo, camera }: View,
  startMm: number,
  piece: TappedPiece,
  index: number,
  below: readonly PlacedPiece[],
): Result<SetPiece, PhotoIssue> {
  let bottomMm = startMm;
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const layers = below.filter(({ topMm }) => topMm <= bottomMm + SAME_LEVEL_MM).length;
    const bottomSigmaMm = SIZE_SIGMA_MM * Math.sqrt(layers);
    const fit = fitSolid(photo, camera, { ...piece, bottomMm, bottomSigmaMm }, piece.taps);
    if (!fit.ok) return fit;
    const onTable = placedAt(piece, index, fit.value, 0);
    const landsMm = piece.on === 'table' ? 0 : landing(onTable, spotVariance(fit.value), below);
    if (Math.abs(landsMm - bottomMm) <= SAME_LEVEL_MM) {
      return success({ placed: placedAt(piece, index, fit.value, landsMm), fit: fit.value });
    }
    bottomMm = landsMm;
  }
  return failure([NOT_CLEAR]);
}

/** On level tops the second round is the last; on a slope each is a quarter of the one before. */
const MOST_ROUNDS = 8;

function placedAt(piece: TappedPiece, index: number, { pose }: FittedSolid, bottomMm: number): PlacedPiece {
  const laid = { kind: piece.kind, resting: piece.resting.id, ...pose };
  return placePiece({ laid, solid: piece.solid, resting: piece.resting }, index, bottomMm);
}

/** Where a piece comes to lie among those that it overlaps by more than hands and taps are off; handed in on the table. */
function landing(onTable: PlacedPiece, spotVarianceMm2: number, below: readonly PlacedPiece[]): number {
  const beside = besideMm(spotVarianceMm2);
  const under = below.filter(({ outline }) => planOverlapDepth(onTable.outline, outline) > beside);
  return landOn(onTable, under, CONTACT_MM).bottomMm;
}
