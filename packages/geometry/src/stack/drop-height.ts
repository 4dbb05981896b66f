// How far up one piece has to go to lie on another: the height, over the origin, of the Minkowski difference
// C = lower (+) (-upper). C is only ever asked for its support point along a direction, so flat and curved pieces are
// treated alike and exactly. Revised simplex by column generation (portal refinement); mm, z up.

import type { Box3 } from '../kernel/box.ts';
import { IDENTITY } from '../kernel/rotation.ts';
import { DROP_NUDGE_RELATIVE, DROP_RELATIVE } from '../kernel/tolerance.ts';
import type { Vec3 } from '../kernel/vec.ts';
import { add3, dot3, scale3, sub3 } from '../kernel/vec.ts';
import type { Body } from '../solids/body.ts';
import { moveBody, supportPoint } from '../solids/body.ts';
import { bodyBox } from './body-box.ts';
import { finerNormals } from './finer-normals.ts';
import { exchange, farPortal, holdsMadeUp, portalNormal } from './portal.ts';

/** Where `upper` comes to lie on `lower`. */
export interface Drop {
  /** How far `upper` moves up (or down, when negative) from where it is until it just lies on `lower`, mm. */
  readonly heightMm: number;
  /** Unit normal of the touching surfaces, pointing up from the lower piece; straight up where several would fit. */
  readonly normal: Vec3;
  /** How often the portal was looked through. */
  readonly rounds: number;
  /** What is left between the proven upper and lower bounds, measured along the normal, mm. */
  readonly gapMm: number;
  /** False when the work limit or rounding stopped the search; the height is then still an upper bound. */
  readonly converged: boolean;
}

/**
 * The greatest b_z - a_z over points a of `upper` and b of `lower` that share x and y; null when no such points exist,
 * that is when their shadows do not overlap. Shadows that merely touch may give either answer: ask
 * `planOverlapDepth` first. Linear-programming duality: every upward normal n gives the upper bound S_C(n) / n_z.
 */
export function dropHeight(upper: Body, lower: Body): Drop | null {
  const [upperBox, lowerBox] = [bodyBox(upper), bodyBox(lower)];
  const [upperCentre, lowerCentre] = [middle(upperBox), middle(lowerBox)];
  const offset: Vec3 = [lowerCentre[0] - upperCentre[0], lowerCentre[1] - upperCentre[1], 0];
  const sizeMm = halfDiagonal(upperBox) + halfDiagonal(lowerBox) + Math.hypot(offset[0], offset[1]);
  const drop = reachOverOrigin(
    moveBody(upper, IDENTITY, scale3(upperCentre, -1)),
    moveBody(lower, IDENTITY, sub3(offset, lowerCentre)),
    sizeMm,
  );
  return drop && { ...drop, heightMm: drop.heightMm + (lowerCentre[2] - upperCentre[2]) };
}

/** The drop of two bodies close to the origin; `sizeMm` bounds all points of their Minkowski difference. */
function reachOverOrigin(upper: Body, lower: Body, sizeMm: number): Drop | null {
  const toleranceMm = DROP_RELATIVE * sizeMm;
  const nudge = scale3(NUDGE_DIRECTION, DROP_NUDGE_RELATIVE * sizeMm);
  const furthest = (normal: Vec3): Vec3 => sub3(supportPoint(lower, normal), supportPoint(upper, scale3(normal, -1)));

  let portal = farPortal(sizeMm);
  let contactNormal = UP;
  let heightMm = furthest(UP)[2];
  let gapMm = Number.POSITIVE_INFINITY;
  let rounds = 0;
  for (; rounds < MOST_ROUNDS && gapMm > toleranceMm; rounds++) {
    const normal = portalNormal(portal);
    if (normal === null) break;
    const found = furthest(normal);
    const boundMm = dot3(normal, found) / normal[2];
    if (boundMm < heightMm - toleranceMm && !holdsMadeUp(portal)) {
      heightMm = boundMm;
      contactNormal = normal;
    }
    const entering = { at: sub3(found, nudge), normal };
    gapMm = Math.max(0, dot3(normal, sub3(entering.at, portal[0].at)));
    if (gapMm > toleranceMm) portal = exchange(portal, entering);
  }
  if (holdsMadeUp(portal)) return null;

  if (contactNormal !== UP) {
    for (const finer of finerNormals(portal, contactNormal)) {
      const boundMm = dot3(finer, furthest(finer)) / finer[2];
      if (boundMm > heightMm + toleranceMm) continue;
      heightMm = Math.min(heightMm, boundMm);
      contactNormal = finer;
      break;
    }
  }
  return { heightMm, normal: contactNormal, rounds, gapMm, converged: gapMm <= toleranceMm };
}

const UP: Vec3 = [0, 0, 1];

/**
 * The point looked for often lies exactly over an edge of C (apex on apex, edge over face centre). Corners are therefore
 * exchanged about a point beside it, in a direction that no tidy layout has; the height is read at the true point.
 */
const NUDGE_DIRECTION: Vec3 = [Math.cos(1), Math.sin(1), 0];

/** Work limit. Flat pairs take about 7 rounds, curved pairs up to about 90. */
const MOST_ROUNDS = 200;

const middle = ({ min, max }: Box3): Vec3 => scale3(add3(min, max), 0.5);

const halfDiagonal = ({ min, max }: Box3): number => Math.hypot(max[0] - min[0], max[1] - min[1], max[2] - min[2]) / 2;
