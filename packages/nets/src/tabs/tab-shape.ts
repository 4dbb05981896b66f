// The shape of a tab along its edge: a trapezoid whose ends lean in. mm, rad.

import type { Vec2 } from '@cairnmark/geometry';
import { FAR_SIDE_SHARE } from '../tolerance.ts';

/** Angles between the edge and the two ends of a tab. */
export interface Bevels {
  readonly atA: number;
  readonly atB: number;
}

export interface TabShape {
  /** Counter-clockwise from `a`: a, the two far corners, b. */
  readonly ring: readonly [Vec2, Vec2, Vec2, Vec2];
  readonly depthMm: number;
  readonly areaMm2: number;
}

/** How deep a tab with these ends can be before its far side is too short. */
export const deepestMm = (lengthMm: number, { atA, atB }: Bevels): number =>
  (lengthMm * (1 - FAR_SIDE_SHARE)) / (1 / Math.tan(atA) + 1 / Math.tan(atB));

/** A tab on the right of the edge from `a` to `b`: outside a ring that runs counter-clockwise. */
export function tabShape(a: Vec2, b: Vec2, { atA, atB }: Bevels, depthMm: number): TabShape {
  const lengthMm = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const [ex, ey] = [(b[0] - a[0]) / lengthMm, (b[1] - a[1]) / lengthMm];
  const out = (from: Vec2, along: number): Vec2 => [
    from[0] + ex * along + ey * depthMm,
    from[1] + ey * along - ex * depthMm,
  ];
  const [inA, inB] = [depthMm / Math.tan(atA), depthMm / Math.tan(atB)];
  return { ring: [a, out(a, inA), out(b, -inB), b], depthMm, areaMm2: depthMm * (lengthMm - (inA + inB) / 2) };
}
