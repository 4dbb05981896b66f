// Where a tapped piece stands: on the table or on which of the pieces traced before, and there in which place. How high it
// stands is not told: each height that there is below it is tried, and it must come to lie where it was looked for.

import type { LaidPiece, PlacedPiece, Resting, Result, Solid, SolidSpec, Vec2 } from '@cairnmark/geometry';
import { CONTACT_MM, dropPieces, failure, landOn, makeSolid, placePiece, success } from '@cairnmark/geometry';
import type { FittedCamera, Photo, PhotoIssue, PlanPose } from '@cairnmark/photo';
import { fitSolid, issue } from '@cairnmark/photo';
import { figurePixels } from './figure-pixels.ts';
import { pushApart } from './push-apart.ts';

export interface FitAsk {
  /** null: the edges in it are not looked for. */
  readonly photo: Photo | null;
  readonly camera: FittedCamera;
  /** Traced before, from the table up. */
  readonly below: readonly LaidPiece[];
  readonly solids: readonly (readonly [kind: string, solid: SolidSpec])[];
  readonly slackMm: number;
  readonly kind: string;
  readonly resting: string;
  readonly taps: readonly Vec2[];
}

/** The ways in which it fits the taps, the likeliest first; at least one. */
export type FitAnswer = Result<readonly LaidPiece[], PhotoIssue>;

export function fitPiece({ photo, camera, below, solids, slackMm, kind, resting, taps }: FitAsk): FitAnswer {
  const made = new Map(solids.flatMap(([id, spec]) => solidOf(id, spec)));
  const dropped = dropPieces(below, made, slackMm);
  const solid = made.get(kind);
  const rest = solid?.restings.find(({ id }) => id === resting);
  if (solid === undefined || rest === undefined || !dropped.ok)
    throw new RangeError(`no ${kind} lies on its ${resting}`);
  const site = { camera, placed: dropped.value.pieces, slackMm, kind, solid, resting: rest, taps };
  const tried = levelsOf(site.placed).map((bottomMm) => standAt(site, bottomMm));
  const [best] = tried.flatMap((one) => (one.ok ? [one.value] : [])).sort((a, b) => a.offPx - b.offPx);
  if (best === undefined) {
    const faults = tried.flatMap((one) => (one.ok ? [] : one.issues));
    return failure([faults.find(({ code }) => code === 'level-not-clear') ?? faults[0] ?? NOT_CLEAR]);
  }
  const fitted = fitSolid(photo, camera, listed(site, best.bottomMm), { pixels: taps, sigmaPx: TAP_SIGMA_PX });
  if (!fitted.ok) return fitted;
  const ways = [fitted.value.pose, ...fitted.value.otherWays].map((pose) => laidAt(site, pose, best.bottomMm));
  return success(ways);
}

interface Site {
  readonly camera: FittedCamera;
  readonly placed: readonly PlacedPiece[];
  readonly slackMm: number;
  readonly kind: string;
  readonly solid: Solid;
  readonly resting: Resting;
  readonly taps: readonly Vec2[];
}

/** px. How well a tap is set with the magnifier. */
const TAP_SIGMA_PX = 2;
/** mm. Paper is cut, folded and measured no better, each piece of a tower. */
const BOTTOM_SIGMA_MM = 0.5;
/** mm. Heights this near are one. */
const SAME_LEVEL_MM = 0.5;
/** A piece between two others settles in a few steps, or not at all. */
const MOST_STEPS = 4;

const NOT_CLEAR = issue('level-not-clear', 'say-what-it-stands-on');

const solidOf = (id: string, spec: SolidSpec): readonly (readonly [string, Solid])[] => {
  const solid = makeSolid(spec);
  return solid.ok ? [[id, solid.value]] : [];
};

/** The table, and the top of every piece, each height once. */
function levelsOf(placed: readonly PlacedPiece[]): readonly number[] {
  const levels: number[] = [0];
  for (const { topMm } of placed) {
    if (levels.every((level) => Math.abs(level - topMm) > SAME_LEVEL_MM)) levels.push(topMm);
  }
  return levels;
}

const listed = ({ solid, resting }: Site, bottomMm: number) => ({
  solid,
  resting,
  bottomMm,
  bottomSigmaMm: BOTTOM_SIGMA_MM,
});

/** Looks for it at a height, and anew where it then comes to lie, until both are the same. */
function standAt(
  site: Site,
  firstMm: number,
): Result<{ readonly bottomMm: number; readonly offPx: number }, PhotoIssue> {
  let bottomMm = firstMm;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const fitted = fitSolid(null, site.camera, listed(site, bottomMm), { pixels: site.taps, sigmaPx: TAP_SIGMA_PX });
    if (!fitted.ok) return fitted;
    const laid = laidAt(site, fitted.value.pose, bottomMm);
    const landedMm = landingOf(site, laid);
    if (Math.abs(landedMm - bottomMm) <= SAME_LEVEL_MM)
      return success({ bottomMm, offPx: offPx(site, laid, bottomMm) });
    bottomMm = landedMm;
  }
  return failure([NOT_CLEAR]);
}

const placedAt = ({ solid, resting }: Site, laid: LaidPiece, bottomMm: number): PlacedPiece =>
  placePiece({ laid, solid, resting }, 0, bottomMm);

/** The place as a piece of a layout, off what it only just overlaps. */
function laidAt(site: Site, { xMm, yMm, turnRad }: PlanPose, bottomMm: number): LaidPiece {
  const laid = { kind: site.kind, resting: site.resting.id, xMm, yMm, turnRad };
  const [x, y] = pushApart(placedAt(site, laid, bottomMm), site.placed);
  return { ...laid, xMm: xMm + x, yMm: yMm + y };
}

const landingOf = (site: Site, laid: LaidPiece): number =>
  landOn(placedAt(site, laid, 0), site.placed, CONTACT_MM + site.slackMm).bottomMm;

/** How far the taps are from the piece where it stands, root mean square. */
function offPx(site: Site, laid: LaidPiece, bottomMm: number): number {
  const drawn = figurePixels(site.camera, laid, placedAt(site, laid, bottomMm));
  const nearest = site.taps.map(([u, v]) =>
    Math.min(...(drawn?.points ?? []).map(([x, y]) => (x - u) * (x - u) + (y - v) * (y - v))),
  );
  return Math.sqrt(nearest.reduce((sum, sq) => sum + sq, 0) / nearest.length);
}
