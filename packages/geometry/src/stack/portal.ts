// A portal is a triangle of points of a convex body whose shadow holds a given point of the plane: the basis of the
// revised simplex method, by column generation, for "how high does the body reach over that point?".
// Here the point is the origin; corners run counter-clockwise seen from above, so the plane's normal points up.

import type { Vec3 } from '../kernel/vec.ts';
import { cross2, cross3, flatten, length3, sub3, unit3 } from '../kernel/vec.ts';

export interface Corner {
  readonly at: Vec3;
  /** The unit normal along which the body reaches furthest here; null for a made-up starting corner. */
  readonly normal: Vec3 | null;
}

export type Portal = readonly [Corner, Corner, Corner];

/**
 * A portal of made-up corners round any body within `sizeMm` of the origin. They lie so far down that a corner of the
 * body replaces each of them wherever the origin lies in the body's shadow by more than about a ten-millionth of its size.
 */
export function farPortal(sizeMm: number): Portal {
  const corner = (angleRad: number): Corner => ({
    at: [FAR_OUT * sizeMm * Math.cos(angleRad), FAR_OUT * sizeMm * Math.sin(angleRad), -FAR_DOWN * sizeMm],
    normal: null,
  });
  const third = (2 * Math.PI) / 3;
  return [corner(0), corner(third), corner(2 * third)];
}

const FAR_OUT = 8;
const FAR_DOWN = 1e8;

export const holdsMadeUp = (portal: Portal): boolean => portal.some((corner) => corner.normal === null);

/**
 * Unit normal of the portal's plane, pointing up; null when rounding has left it no area seen from above. On a curved
 * surface two corners come very near each other: taking the two shortest sides keeps their small difference exact.
 */
export function portalNormal([a, b, c]: Portal): Vec3 | null {
  const sides = [sub3(b.at, a.at), sub3(c.at, b.at), sub3(a.at, c.at)] as const;
  const [ab, bc, ca] = sides;
  const longest = Math.max(...sides.map(length3));
  const normal = longest === length3(ab) ? cross3(bc, ca) : longest === length3(bc) ? cross3(ca, ab) : cross3(ab, bc);
  return normal[2] > 0 ? unit3(normal) : null;
}

/**
 * The portal with one corner exchanged for `entering` so that the origin stays inside. The pair to keep is the one
 * between whose corners `entering` sees the origin; among near-ties the pair that leaves it least outside.
 */
export function exchange([a, b, c]: Portal, entering: Corner): Portal {
  const [toA, toB, toC] = [sideOf(entering, a), sideOf(entering, b), sideOf(entering, c)];
  const keepAB = Math.min(toA, -toB);
  const keepBC = Math.min(toB, -toC);
  const keepCA = Math.min(toC, -toA);
  if (keepAB >= keepBC && keepAB >= keepCA) return [entering, a, b];
  return keepBC >= keepCA ? [entering, b, c] : [entering, c, a];
}

/** Positive when the origin lies to the left on the way from `from` to `to`, seen from above. */
export const sideOf = (from: Corner, to: Corner): number => cross2(flatten(from.at), flatten(to.at));
