// A height found to 1e-14 fixes the contact normal on a curved surface only to its square root, 1e-7: too coarse for
// the question whether a build stands. The corners of the last portal know better: each was found along its own normal,
// and between them the slope of a curved surface changes as good as linearly.

import type { Vec2, Vec3 } from '../kernel/vec.ts';
import { add2, dot2, flatten, length2, scale2, sub2, unit3 } from '../kernel/vec.ts';
import type { Portal } from './portal.ts';
import { sideOf } from './portal.ts';

/**
 * Unit normals to try in place of `normal`, best first; the caller takes the first that proves the height. Round a
 * point contact: the corners' slopes blended by their weights at the origin. Along a line contact the corners at its
 * ends fit many slopes lengthwise: there only the crosswise slope is blended. On a flat face neither proves the height.
 */
export function finerNormals(portal: Portal, normal: Vec3): readonly Vec3[] {
  const [a, b, c] = portal;
  if (a.normal === null || b.normal === null || c.normal === null) return [];
  const weights = [sideOf(b, c), sideOf(c, a), sideOf(a, b)] as const;
  const total = weights[0] + weights[1] + weights[2];
  if (total <= 0) return [];
  const sum = add2(
    add2(scale2(slope(a.normal), weights[0]), scale2(slope(b.normal), weights[1])),
    scale2(slope(c.normal), weights[2]),
  );
  const blended = scale2(sum, 1 / total);
  const across = crosswise(portal);
  const change = dot2(sub2(blended, slope(normal)), across);
  return [withSlope(blended), withSlope(add2(slope(normal), scale2(across, change)))];
}

/** How fast a plane with this upward normal falls along x and along y. */
const slope = (normal: Vec3): Vec2 => [normal[0] / normal[2], normal[1] / normal[2]];

const withSlope = (fall: Vec2): Vec3 => unit3([fall[0], fall[1], 1]);

/** The unit vector square to the longest side of the portal's shadow. */
function crosswise([a, b, c]: Portal): Vec2 {
  const sides = [
    sub2(flatten(b.at), flatten(a.at)),
    sub2(flatten(c.at), flatten(b.at)),
    sub2(flatten(a.at), flatten(c.at)),
  ];
  const longest = sides.reduce((best, side) => (length2(side) > length2(best) ? side : best));
  const length = length2(longest);
  return [-longest[1] / length, longest[0] / length];
}
