// Which way pieces go, as the points of an arrow in space: round the edge that they turn over, or straight along. mm.

import type { Body, Hinge, Vec2, Vec3 } from '@cairnmark/geometry';
import { supportPoint } from '@cairnmark/geometry';

/** An arc about the hinge, beside the pieces near their top, or over them when they reach far out. */
export function turnArrow(bodies: readonly Body[], { ends, towards }: Hinge): readonly Vec3[] {
  const pivot: Vec3 = [(ends[0][0] + ends[1][0]) / 2, (ends[0][1] + ends[1][1]) / 2, (ends[0][2] + ends[1][2]) / 2];
  const topMm = reachOf(bodies, [0, 0, 1]) - pivot[2];
  const outMm = reachOf(bodies, [towards[0], towards[1], 0]) - (pivot[0] * towards[0] + pivot[1] * towards[1]);
  const besideMm = BESIDE_OF_TOP * topMm;
  const sine = (outMm + CLEAR_MM) / besideMm;
  const isBeside = besideMm > LEAST_RADIUS_MM && sine < STEEPEST_SINE;
  const radiusMm = isBeside ? besideMm : Math.max(topMm, LEAST_RADIUS_MM) + CLEAR_MM;
  const fromRad = isBeside ? Math.asin(Math.max(0, sine)) : OVER_TOP_FROM_RAD;
  return Array.from({ length: ARC_POINTS }, (_, k): Vec3 => {
    const angle = fromRad + (k / (ARC_POINTS - 1)) * (ARC_MM / radiusMm);
    const out = radiusMm * Math.sin(angle);
    return [pivot[0] + towards[0] * out, pivot[1] + towards[1] * out, pivot[2] + radiusMm * Math.cos(angle)];
  });
}

/** Level, beside the pieces; no points when the way is not known. */
export function slideArrow(bodies: readonly Body[], towards: Vec2 | null): readonly Vec3[] {
  if (towards === null || bodies.length === 0) return [];
  const middle = (axis: Vec3): number => (reachOf(bodies, axis) - reachOf(bodies, [-axis[0], -axis[1], -axis[2]])) / 2;
  const aside: Vec3 = [-towards[1], towards[0], 0];
  const [across, z] = [middle(aside), middle([0, 0, 1])];
  const outMm = reachOf(bodies, [towards[0], towards[1], 0]) + CLEAR_MM;
  return Array.from({ length: ARC_POINTS }, (_, k): Vec3 => {
    const out = outMm + (SLIDE_MM * k) / (ARC_POINTS - 1);
    return [towards[0] * out + aside[0] * across, towards[1] * out + aside[1] * across, z];
  });
}

const reachOf = (bodies: readonly Body[], direction: Vec3): number =>
  Math.max(
    ...bodies.map((body) => {
      const point = supportPoint(body, direction);
      return point[0] * direction[0] + point[1] * direction[1] + point[2] * direction[2];
    }),
  );

/** Share of the height over the hinge. */
const BESIDE_OF_TOP = 0.85;
/** Between pieces and arrow. */
const CLEAR_MM = 9;
const STEEPEST_SINE = 0.75;
const OVER_TOP_FROM_RAD = 0.1;
const ARC_MM = 46;
const ARC_POINTS = 12;
const LEAST_RADIUS_MM = 20;
const SLIDE_MM = 40;
