// The convex hull of outlines: the string drawn tight around them, on true arcs; mm. Points count as discs of radius 0.
// Method: in direction t a disc reaches c . (cos t, sin t) + r. It lies on the hull for those t in which it reaches
// farthest; another disc reaches farther over one arc of directions, known in closed form. Area by Green's theorem.

import { convexHull } from '../kernel/hull.ts';
import type { Outline } from '../kernel/outline.ts';
import type { Vec2 } from '../kernel/vec.ts';
import { add2, sub2 } from '../kernel/vec.ts';
import type { BoundaryArc, BoundaryLine } from './boundary.ts';
import type { Rim } from './edge.ts';
import { areaUnder, FULL_TURN, leftOf, lengthBetween, sideBetween, xAt, yAt } from './edge.ts';
import { frameOf } from './pieces-of.ts';
import type { Span, Spans } from './spans.ts';
import { arcSpans, without } from './spans.ts';

export interface HullFacts {
  readonly areaMm2: number;
  readonly perimeterMm: number;
  /** The way round, counter-clockwise. */
  readonly boundary: readonly (BoundaryArc | BoundaryLine)[];
}

/**
 * The hull of outlines of any kind, points and lines among them; of one line it is gone round there and back.
 * Throws RangeError on a coordinate that is not finite.
 */
export function hullOf(outlines: readonly Outline[]): HullFacts {
  const { origin, noiseMm } = frameOf(outlines);
  const rims = withoutInner(rimsOf(outlines, origin), noiseMm);
  const exposed = rims
    .flatMap((rim, i) => exposedSpans(rim, i, rims).map((span): Exposed => ({ rim, ...span })))
    .filter(({ from, to }) => to - from > LEAST_RAD)
    .sort((a, b) => a.from - b.from);
  const boundary: (BoundaryArc | BoundaryLine)[] = [];
  let [areaMm2, perimeterMm] = [0, 0];
  exposed.forEach((arc, i) => {
    const next = exposed[i + 1] ?? exposed[0] ?? arc;
    const [end, start] = [pointAt(arc.rim, arc.to), pointAt(next.rim, next.from)];
    const line = sideBetween(end, start, 0, false);
    areaMm2 += areaUnder(arc.rim, arc.from, arc.to) + areaUnder(line, 0, 1);
    perimeterMm += lengthBetween(arc.rim, arc.from, arc.to) + line.lengthMm;
    if (arc.rim.radiusMm > 0) boundary.push(boundaryArc(arc, origin));
    if (line.lengthMm > noiseMm) boundary.push({ kind: 'line', from: add2(end, origin), to: add2(start, origin) });
  });
  return { areaMm2: Math.max(0, areaMm2), perimeterMm, boundary };
}

/** The directions in which one rim reaches farthest of all. */
interface Exposed extends Span {
  readonly rim: Rim;
}

/** rad. Corners that stick out over less than this are rounding on a straight line. */
const LEAST_RAD = 1e-12;

function rimsOf(outlines: readonly Outline[], origin: Vec2): readonly Rim[] {
  const rimAt = (at: Vec2, radiusMm: number): Rim => {
    const [x, y] = sub2(at, origin);
    return { kind: 'rim', x, y, radiusMm, index: 0 };
  };
  return outlines.flatMap((outline) =>
    outline.kind === 'disc'
      ? [rimAt(outline.centre, outline.radiusMm)]
      : outline.points.map((point) => rimAt(point, 0)),
  );
}

/** The rims without most of those that lie inside the hull: a few farthest points span a polygon that rules them out. */
function withoutInner(rims: readonly Rim[], noiseMm: number): readonly Rim[] {
  if (rims.length <= PROBES) return rims;
  const farthest = Array.from({ length: PROBES }, (_, k) => farthestPoint(rims, (k * FULL_TURN) / PROBES));
  const corners = convexHull(farthest, noiseMm);
  const sides = corners.map((corner, i) => sideBetween(corner, corners[i + 1] ?? corners[0] ?? corner, i, false));
  if (sides.length < 3) return rims;
  return rims.filter((rim) => sides.some((side) => leftOf(side, rim.x, rim.y) < rim.radiusMm + noiseMm));
}

const PROBES = 64;

function farthestPoint(rims: readonly Rim[], direction: number): Vec2 {
  const [ux, uy] = [Math.cos(direction), Math.sin(direction)];
  let farthest: Vec2 = [0, 0];
  let reach = Number.NEGATIVE_INFINITY;
  for (const { x, y, radiusMm } of rims) {
    const own = x * ux + y * uy + radiusMm;
    if (own > reach) {
      reach = own;
      farthest = [x + radiusMm * ux, y + radiusMm * uy];
    }
  }
  return farthest;
}

function exposedSpans(rim: Rim, i: number, rims: readonly Rim[]): Spans {
  let exposed: Spans = [{ from: 0, to: FULL_TURN }];
  for (const [j, other] of rims.entries()) {
    if (exposed.length === 0) break;
    if (i === j) continue;
    const more = rim.radiusMm - other.radiusMm;
    const apart = Math.hypot(other.x - rim.x, other.y - rim.y);
    if (apart <= Math.abs(more)) {
      if (more < 0 || (more === 0 && j < i)) return [];
      continue;
    }
    const half = Math.atan2(Math.sqrt((apart - more) * (apart + more)), more);
    const towards = Math.atan2(other.y - rim.y, other.x - rim.x);
    for (const { from, to } of arcSpans(towards - half, 2 * half)) exposed = without(exposed, from, to);
  }
  return exposed;
}

const pointAt = (rim: Rim, at: number): Vec2 => [xAt(rim, at), yAt(rim, at)];

function boundaryArc({ rim, from, to }: Exposed, origin: Vec2): BoundaryArc {
  return { kind: 'arc', centre: add2([rim.x, rim.y], origin), radiusMm: rim.radiusMm, fromRad: from, toRad: to };
}
