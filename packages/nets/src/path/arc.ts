// Arcs of circles as cubics of at most 45 degrees each. The control points stand at 4/3 tan(angle / 4) radii along the
// tangents, the usual choice (common practice, no source): the curve is off the circle by at most 4.3e-6 of its radius.

import type { Vec2 } from '@cairnmark/geometry';
import type { Path, PathStep } from './path.ts';

const WIDEST_RAD = Math.PI / 4;

/** The steps along the circle from one angle to another, counter-clockwise when `toRad` is the larger; angles in rad. */
export function arcSteps(centre: Vec2, radiusMm: number, fromRad: number, toRad: number): readonly PathStep[] {
  const pieces = Math.max(1, Math.ceil(Math.abs(toRad - fromRad) / WIDEST_RAD - 1e-9));
  const angle = (toRad - fromRad) / pieces;
  const reach = (4 / 3) * Math.tan(angle / 4);
  return Array.from({ length: pieces }, (_, k): PathStep => {
    const [a, b] = [fromRad + k * angle, fromRad + (k + 1) * angle];
    return {
      kind: 'curve',
      c1: offCircle(centre, radiusMm, a, reach),
      c2: offCircle(centre, radiusMm, b, -reach),
      to: onCircle(centre, radiusMm, b),
    };
  });
}

/** A whole circle, counter-clockwise. */
export function circlePath(centre: Vec2, radiusMm: number): Path {
  return { start: onCircle(centre, radiusMm, 0), steps: arcSteps(centre, radiusMm, 0, 2 * Math.PI), closed: true };
}

export const onCircle = (centre: Vec2, radiusMm: number, angle: number): Vec2 => [
  centre[0] + radiusMm * Math.cos(angle),
  centre[1] + radiusMm * Math.sin(angle),
];

/** From the point of the circle at `angle` along the tangent, by `reach` radii. */
function offCircle(centre: Vec2, radiusMm: number, angle: number, reach: number): Vec2 {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return [centre[0] + radiusMm * (cos - reach * sin), centre[1] + radiusMm * (sin + reach * cos)];
}
