// At which height a tapped piece stands, and where. Place and height hang together: seen from above, a piece that stands higher shows
// further from the middle. From every level that is there the piece is set and let down, until it stays where it is; of such
// places the one that fits its taps and the edges of the photo best is taken.

import type { PlacedPiece, Result } from '@cairnmark/geometry';
import { CONTACT_MM, failure, landOn, placePiece, planOverlapDepth, success } from '@cairnmark/geometry';
import type { PhotoIssue } from '../issues.ts';
import { issue } from '../issues.ts';
import { BESIDE_MM, SAME_LEVEL_MM, SIZE_SIGMA_MM } from '../tolerance.ts';
import type { FittedSolid } from './fit-solid.ts';
import { fitSolid, worth } from './fit-solid.ts';
import type { TappedPiece, View } from './trace-tower.ts';

export interface SetPiece {
  readonly placed: PlacedPiece;
  readonly fit: FittedSolid;
}

/** The piece among those below it. */
export function setPiece(
  { photo, camera }: View,
  piece: TappedPiece,
  index: number,
  below: readonly PlacedPiece[],
): Result<SetPiece, PhotoIssue> {
  const fitAt = (bottomMm: number, bottomSigmaMm: number, edges: boolean): Result<FittedSolid, PhotoIssue> =>
    fitSolid(edges ? photo : null, camera, { ...piece, bottomMm, bottomSigmaMm }, piece.taps);
  const starts = piece.on === 'table' ? [0] : levelsOf(below);
  const tried = starts.map((start) => settled(start, (level) => fitAt(level, 0, false), piece, index, below));
  const levels = tried.flatMap((one) => ('bottomMm' in one ? [one.bottomMm] : [])).sort((x, y) => x - y);
  const apart = levels.filter((level, k) => k === 0 || level - (levels[k - 1] ?? 0) > SAME_LEVEL_MM);
  const standing = apart.flatMap((bottomMm) => {
    const layers = below.filter(({ topMm }) => topMm <= bottomMm + SAME_LEVEL_MM).length;
    const fit = fitAt(bottomMm, SIZE_SIGMA_MM * Math.sqrt(layers), true);
    return fit.ok ? [{ fit: fit.value, placed: placedAt(piece, index, fit.value, bottomMm) }] : [];
  });
  // At a wrong height a piece of known size fits neither its taps nor the edges.
  const best = standing.sort((one, other) => worth(other.fit) - worth(one.fit))[0];
  if (best !== undefined) return success(best);
  const fault = tried.flatMap((one) => ('issues' in one ? one.issues : []))[0];
  return failure([fault ?? issue('level-not-clear', 'say-what-it-stands-on')]);
}

/** The table and the tops of all pieces. */
function levelsOf(below: readonly PlacedPiece[]): readonly number[] {
  return [...new Set([0, ...below.map(({ topMm }) => topMm)])];
}

/** From a height to the place there, from the place to the height at which it lands, and so on until both stay. */
function settled(
  startMm: number,
  fitAt: (bottomMm: number) => Result<FittedSolid, PhotoIssue>,
  piece: TappedPiece,
  index: number,
  below: readonly PlacedPiece[],
): { readonly bottomMm: number } | { readonly issues: readonly PhotoIssue[] } {
  let bottomMm = startMm;
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const fit = fitAt(bottomMm);
    if (!fit.ok) return { issues: fit.issues };
    const landsMm = piece.on === 'table' ? 0 : landing(placedAt(piece, index, fit.value, 0), below);
    if (Math.abs(landsMm - bottomMm) <= SAME_LEVEL_MM) return { bottomMm: landsMm };
    bottomMm = landsMm;
  }
  return { issues: [issue('level-not-clear', 'say-what-it-stands-on')] };
}

/** On level tops the second round is the last; on a slope each is a quarter of the one before. */
const MOST_ROUNDS = 8;

function placedAt(piece: TappedPiece, index: number, { pose }: FittedSolid, bottomMm: number): PlacedPiece {
  const laid = { kind: piece.kind, resting: piece.resting.id, ...pose };
  return placePiece({ laid, solid: piece.solid, resting: piece.resting }, index, bottomMm);
}

/** Where a piece comes to lie among those that it overlaps by more than hands and taps are off; handed in on the table. */
function landing(onTable: PlacedPiece, below: readonly PlacedPiece[]): number {
  const under = below.filter(({ outline }) => planOverlapDepth(onTable.outline, outline) > BESIDE_MM);
  return landOn(onTable, under, CONTACT_MM).bottomMm;
}
