// Where a tapped piece stands among those that were traced before it.

import type { PlacedPiece, Result, SolidSpec, Vec2 } from '@cairnmark/geometry';
import { makeSolid, placePiece, success } from '@cairnmark/geometry';
import type { FittedCamera, Photo, PhotoIssue, PlanPose, Traced } from '@cairnmark/photo';
import { setPiece } from '@cairnmark/photo';

/** A piece where it was traced. */
export interface TracedSpot extends Traced {
  /** Of x and y (mm), row by row: how well its spot is known. */
  readonly spotCovariance: readonly [number, number, number, number];
}

export interface FitAsk {
  readonly photo: Photo;
  readonly camera: FittedCamera;
  /** Traced before, from the table up. */
  readonly below: readonly PlacedPiece[];
  readonly kind: string;
  readonly spec: SolidSpec;
  readonly resting: string;
  readonly taps: readonly Vec2[];
}

/** The ways in which it fits the taps, the likeliest first; at least one. */
export type FitAnswer = Result<readonly TracedSpot[], PhotoIssue>;

/** px. How well a tap is set with the magnifier. */
export const TAP_SIGMA_PX = 2;

export function fitPiece({ photo, camera, below, kind, spec, resting, taps }: FitAsk): FitAnswer {
  const solid = makeSolid(spec);
  const side = solid.ok ? solid.value.restings.find(({ id }) => id === resting) : undefined;
  if (!solid.ok || side === undefined) throw new RangeError(`no ${kind} lies on its ${resting}`);
  const piece = { kind, solid: solid.value, resting: side, taps: { pixels: taps, sigmaPx: TAP_SIGMA_PX } };
  const set = setPiece({ photo, camera }, piece, below.length, below);
  if (!set.ok) return set;
  const { placed, fit } = set.value;
  const [xx = 0, xy = 0, , yx = 0, yy = 0] = fit.covariance;
  const spot = {
    spotCovariance: [xx, xy, yx, yy] as const,
    spotVarianceMm2: (xx + yy) / 2 + Math.hypot((xx - yy) / 2, xy),
  };
  const at = ({ xMm, yMm, turnRad }: PlanPose): TracedSpot => {
    const laid = { kind, resting, xMm, yMm, turnRad };
    return {
      ...spot,
      laid,
      placed: placePiece({ laid, solid: solid.value, resting: side }, below.length, placed.bottomMm),
    };
  };
  return success([fit.pose, ...fit.otherWays].map(at));
}
