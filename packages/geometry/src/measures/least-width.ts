// Least width of a convex figure: the distance of the nearest pair of parallel lines that hold it between them, mm.
// In direction u the figure of discs and points is (c - c') . u + r + r' wide, between the two that reach farthest each
// way. There (c - c') . u >= |r - r'|, so between two turns of the string the width is concave in the angle and is least
// at a turn: across one of the straight lines of the hull. Source: Houle and Toussaint 1988 for polygons, from memory.

import { SAME_LENGTH_MM } from '../kernel/tolerance.ts';
import type { Vec2 } from '../kernel/vec.ts';
import { dot2, length2, scale2, sub2 } from '../kernel/vec.ts';
import type { HullFacts } from '../outline/index.ts';

/** The least width of the hull, mm: of a disc its diameter, of a point or a line 0. True arcs, exact to rounding. */
export function leastWidthMm({ boundary }: HullFacts): number {
  const across = boundary.flatMap((part) => (part.kind === 'line' ? [widthAcross(part, boundary)] : []));
  const widthMm = across.length > 0 ? Math.min(...across) : Math.max(0, ...boundary.map(diameterOf));
  return widthMm <= SAME_LENGTH_MM ? 0 : widthMm;
}

type Part = HullFacts['boundary'][number];

/** From a line of the hull to what lies farthest from it. The figure lies to the left of the line. */
function widthAcross({ from, to }: Part & { kind: 'line' }, boundary: readonly Part[]): number {
  const along = sub2(to, from);
  const inward = scale2([-along[1], along[0]], 1 / length2(along));
  const reach = boundary.reduce((farthest, part) => Math.max(farthest, reachOf(part, inward)), dot2(from, inward));
  return reach - dot2(from, inward);
}

/** How far a part of the boundary reaches; of an arc its whole disc, which lies within the figure. */
function reachOf(part: Part, direction: Vec2): number {
  return part.kind === 'arc'
    ? dot2(part.centre, direction) + part.radiusMm
    : Math.max(dot2(part.from, direction), dot2(part.to, direction));
}

const diameterOf = (part: Part): number => (part.kind === 'arc' ? 2 * part.radiusMm : 0);
