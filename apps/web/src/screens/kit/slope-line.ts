// Where a slope runs on a solid, so that it can be drawn: its two ends in the solid's own frame, mm. A pyramid has its front
// edge along x, so that the middle of that edge and its right corner are in sight from the corner.

import type { Sizes, SlopeName, Vec3 } from '@cairnmark/geometry';

/** `own`: the sizes in the solid's own terms. `runMm`: how far the slope reaches towards the middle. */
export function slopeLine(name: SlopeName, own: Sizes, runMm: number): readonly Vec3[] {
  const heightMm = own['height'] ?? 0;
  const foot = footOf(name, own);
  const reach = Math.hypot(foot[0], foot[1]);
  const left = reach === 0 ? 0 : (reach - runMm) / reach;
  return [
    [foot[0], foot[1], 0],
    [foot[0] * left, foot[1] * left, heightMm],
  ];
}

function footOf(name: SlopeName, own: Sizes): readonly [x: number, y: number] {
  const { radius, edge, sides, length = 0, width = 0 } = own;
  // On the right limb of a cone, as it is seen from the corner.
  if (radius !== undefined) return [radius * Math.cos(VIEW_RAD), radius * Math.sin(VIEW_RAD)];
  if (edge !== undefined && sides !== undefined) {
    const inradius = edge / (2 * Math.tan(Math.PI / sides));
    return name === 'slantEdge' ? [edge / 2, -inradius] : [0, -inradius];
  }
  if (name === 'slantEdge') return [length / 2, -width / 2];
  return name === 'slantLength' ? [0, -width / 2] : [length / 2, 0];
}

/** 30 degrees: the corner view. */
const VIEW_RAD = Math.PI / 6;
