// Sets the sides of a dark quadrilateral on the steps of brightness beside them, and its corners where these sides cross.

import type { Vec2 } from '@cairnmark/geometry';
import { MARKER_CELLS } from '../ground-sheet.ts';
import { edgePoints } from '../image/edge.ts';
import type { Plane } from '../image/photo.ts';
import type { Line } from '../numbers/line.ts';
import { crossing, lineThrough } from '../numbers/line.ts';
import { LEAST_CONTRAST } from '../tolerance.ts';
import type { Quad } from './quadrilateral.ts';
import { sidesOf, turnsClockwise } from './quadrilateral.ts';

/** Null where a side has no edge, or the sides no longer make a quadrilateral near the rough one. */
export function refineQuad(plane: Plane, rough: Quad): Quad | null {
  const once = refineOnce(plane, rough);
  return once && refineOnce(plane, once);
}

function refineOnce(plane: Plane, quad: Quad): Quad | null {
  const lines = sidesOf(quad).map(([from, to], k) => sideLine(plane, from, to, thicknessPx(quad, k)));
  const corners = quad.map((_, k) => {
    const [before, after] = [lines[(k + 3) % 4], lines[k]];
    return before && after ? crossing(before, after) : null;
  });
  const [a, b, c, d] = corners;
  if (!(a && b && c && d)) return null;
  const refined: Quad = [a, b, c, d];
  const near = refined.every((corner, k) => distance(corner, quad[k] ?? corner) <= FURTHEST_PX);
  return near && turnsClockwise(refined) ? refined : null;
}

function sideLine(plane: Plane, from: Vec2, to: Vec2, thickness: number): Line | null {
  const samples = Math.min(MOST_SAMPLES, Math.max(LEAST_SAMPLES, Math.round(distance(from, to))));
  const points = edgePoints(plane, from, to, {
    reachPx: Math.min(MOST_REACH_PX, Math.max(LEAST_REACH_PX, thickness)),
    samples,
    inset: INSET,
    leastRise: LEAST_CONTRAST / 2,
  });
  return points.length < samples / 2 ? null : lineThrough(points, USUAL_PX);
}

/** px. How thick the black border is behind side `k`: no search may reach through it to a white cell. */
function thicknessPx(quad: Quad, k: number): number {
  const [from, to] = sidesOf(quad)[k] ?? [quad[0], quad[1]];
  const length = distance(from, to);
  const depth = ([x, y]: Vec2): number =>
    Math.abs((to[0] - from[0]) * (y - from[1]) - (to[1] - from[1]) * (x - from[0])) / length;
  const [third, fourth] = [quad[(k + 2) % 4] ?? from, quad[(k + 3) % 4] ?? from];
  return Math.min(depth(third), depth(fourth)) / MARKER_CELLS;
}

const distance = (a: Vec2, b: Vec2): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

const [LEAST_SAMPLES, MOST_SAMPLES] = [8, 48];
/** px. Wide enough for a blurred edge beside a border of pixels, and no wider than three pixels. */
const [LEAST_REACH_PX, MOST_REACH_PX] = [1.5, 3];
/** Corners are rounded by blur over about a pixel and a half: a tenth of a small side. */
const INSET = 0.1;
/** px. Points of a side usually lie this near to it. */
const USUAL_PX = 0.15;
/** px. No corner moves further than blur and a stray pixel explain. */
const FURTHEST_PX = 4;
