// The part of a footprint that hangs out past the ground it stands on, as slanted lines for drawing. mm, frame of the table.

import type { DrawnPart, Outline, Vec2 } from '@cairnmark/geometry';

export type Segment = readonly [from: Vec2, to: Vec2];

/** A stretch of a line. */
interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** Lines at 45 degrees, `apartMm` apart, where the footprint covers and no `base` outline does. */
export function hatchPast(
  footprint: readonly DrawnPart[],
  base: readonly Outline[],
  apartMm: number,
): readonly Segment[] {
  const rings = footprint.flatMap(({ outer, holes }) => [outer, ...holes]).map((ring) => ring.map(slanted));
  const grounds = base.map(ringOf).map((ring) => ring.map(slanted));
  const heights = rings.flat().map(([, y]) => y);
  if (heights.length === 0) return [];
  const first = Math.ceil(Math.min(...heights) / apartMm);
  const last = Math.floor(Math.max(...heights) / apartMm);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, k) => (first + k) * apartMm).flatMap((y) => {
    const covered = stretches(rings, y);
    const left = grounds.reduce((rest, ring) => without(rest, stretches([ring], y)), covered);
    return left
      .filter(({ from, to }) => to - from > SHORTEST_MM)
      .map(({ from, to }): Segment => [upright([from, y]), upright([to, y])]);
  });
}

/** The rim of that part: what of the footprint's rim does not run along the base. */
export function rimPast(footprint: readonly DrawnPart[], base: readonly Outline[]): readonly Segment[] {
  const grounds = base.map(ringOf);
  return footprint
    .flatMap(({ outer, holes }) => [outer, ...holes])
    .flatMap((ring) => ring.flatMap((from, k) => cutUp(from, ring[(k + 1) % ring.length] ?? from)))
    .filter(([from, to]) => !grounds.some((ground) => isInside(ground, inward(from, to))));
}

/** mm. Shorter lines are dust. */
const SHORTEST_MM = 1.5;

/** Pieces of a line, each short enough to be judged by its middle. */
function cutUp(from: Vec2, to: Vec2): readonly Segment[] {
  const count = Math.max(1, Math.round(Math.hypot(to[0] - from[0], to[1] - from[1]) / PIECE_MM));
  const at = (k: number): Vec2 => [
    from[0] + ((to[0] - from[0]) * k) / count,
    from[1] + ((to[1] - from[1]) * k) / count,
  ];
  return Array.from({ length: count }, (_, k): Segment => [at(k), at(k + 1)]);
}

const PIECE_MM = 2;

/** A point just inside the footprint beside the middle of a side; the footprint lies to the left of its rings. */
function inward(from: Vec2, to: Vec2): Vec2 {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const [x, y] = length > 0 ? [(to[0] - from[0]) / length, (to[1] - from[1]) / length] : [0, 0];
  return [(from[0] + to[0]) / 2 - y * INWARD_MM, (from[1] + to[1]) / 2 + x * INWARD_MM];
}

const INWARD_MM = 0.8;

const isInside = (ring: readonly Vec2[], [x, y]: Vec2): boolean =>
  stretches([ring], y).some(({ from, to }) => from < x && x < to);

const DISC_CORNERS = 64;

function ringOf(outline: Outline): readonly Vec2[] {
  if (outline.kind === 'polygon') return outline.points;
  const { centre, radiusMm } = outline;
  return Array.from({ length: DISC_CORNERS }, (_, k): Vec2 => {
    const angle = (2 * Math.PI * k) / DISC_CORNERS;
    return [centre[0] + radiusMm * Math.cos(angle), centre[1] + radiusMm * Math.sin(angle)];
  });
}

/** The stretches of the level line at `y` inside the rings, by crossings (even and odd). */
function stretches(rings: readonly (readonly Vec2[])[], y: number): readonly Stretch[] {
  const crossings = rings
    .flatMap((ring) => {
      const places: number[] = [];
      let before = ring.at(-1);
      for (const corner of ring) {
        if (before !== undefined && before[1] > y !== corner[1] > y) {
          places.push(before[0] + ((y - before[1]) / (corner[1] - before[1])) * (corner[0] - before[0]));
        }
        before = corner;
      }
      return places;
    })
    .sort((a, b) => a - b);
  const found: Stretch[] = [];
  let from: number | null = null;
  for (const place of crossings) {
    if (from !== null) found.push({ from, to: place });
    from = from === null ? place : null;
  }
  return found;
}

/** What of some stretches is left outside others. */
const without = (stretched: readonly Stretch[], taken: readonly Stretch[]): readonly Stretch[] =>
  taken.reduce(
    (rest, { from, to }) =>
      rest.flatMap((one) => [
        ...(one.from < from ? [{ from: one.from, to: Math.min(one.to, from) }] : []),
        ...(one.to > to ? [{ from: Math.max(one.from, to), to: one.to }] : []),
      ]),
    stretched,
  );

const slanted = ([x, y]: Vec2): Vec2 => [(x + y) * Math.SQRT1_2, (y - x) * Math.SQRT1_2];
const upright = ([x, y]: Vec2): Vec2 => [(x - y) * Math.SQRT1_2, (x + y) * Math.SQRT1_2];
