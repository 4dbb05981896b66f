// Sets the sides of a tapped outline on the edges that the photo shows beside them, each by itself; corners come to lie where snapped
// sides meet. A side without enough of an edge stays as tapped, and no corner moves further than its tap may be off.

import type { Vec2 } from '@cairnmark/geometry';
import { colourSteps } from '../image/colour-step.ts';
import type { Photo } from '../image/photo.ts';
import type { Line } from '../numbers/line.ts';
import { crossing } from '../numbers/line.ts';
import type { LineSearch } from '../numbers/voted-line.ts';
import { rivalOf, votedLine } from '../numbers/voted-line.ts';
import {
  EDGE_REACH_PX,
  LEAST_COLOUR_STEP,
  LEAST_SIDE_SUPPORT,
  MOST_PULL_SIGMAS,
  MOST_RIVAL_WORTH,
  MOST_STEPS,
  ON_LINE_PX,
  SIDE_SAMPLES,
} from '../tolerance.ts';

export interface SnappedSides {
  readonly corners: readonly Vec2[];
  /** For every side, beginning at the corner of its number, whether it lies on an edge of the photo. */
  readonly onEdge: readonly boolean[];
}

export function snapSides(photo: Photo, taps: readonly Vec2[], sigmaPx: number): SnappedSides {
  const sides = taps.map((from, k) => sideOn(photo, from, taps[(k + 1) % taps.length] ?? from, sigmaPx));
  const moved = taps.map((tap, k): Vec2 | null => {
    const [before, after] = [sides.at(k - 1) ?? null, sides[k] ?? null];
    if (before !== null && after !== null) return crossing(before, after);
    // One side alone says only how far the corner lies across it.
    const only = before ?? after;
    return only === null ? null : footOn(only, tap);
  });
  const near = moved.map((corner, k) => {
    const tap = taps[k];
    return corner !== null && tap !== undefined && distance(corner, tap) <= MOST_PULL_SIGMAS * sigmaPx;
  });
  return {
    corners: taps.map((tap, k) => (near[k] ? (moved[k] ?? tap) : tap)),
    onEdge: sides.map((side, k) => side !== null && near[k] === true && near[(k + 1) % taps.length] === true),
  };
}

function sideOn(photo: Photo, from: Vec2, to: Vec2, sigmaPx: number): Line | null {
  const length = distance(from, to);
  if (!(length > 0)) return null;
  const along: Vec2 = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const across: Vec2 = [along[1], -along[0]];
  const middle: Vec2 = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const reachPx = Math.min(EDGE_REACH_PX, MOST_PULL_SIGMAS * sigmaPx);
  const places = Array.from({ length: SIDE_SAMPLES }, (_, k) => {
    const way = INSET * length * ((k + 0.5) / SIDE_SAMPLES - 0.5);
    const at: Vec2 = [middle[0] + way * along[0], middle[1] + way * along[1]];
    const steps = colourSteps(photo, at, across, reachPx, LEAST_COLOUR_STEP, MOST_STEPS);
    return { along: way, values: steps.map(({ offsetPx }) => offsetPx) };
  });
  const search: LineSearch = {
    leastApart: length / 3,
    mostSlope: (2 * reachPx) / length,
    nearness: ON_LINE_PX,
    // Half a squared deviation at both ends.
    cost: (offset, slope) =>
      ((offset + (slope * length) / 2) ** 2 + (offset - (slope * length) / 2) ** 2) / (2 * sigmaPx ** 2 * SIDE_WORTH),
  };
  const line = votedLine(places, search);
  if (line === null || line.support < LEAST_SIDE_SUPPORT) return null;
  const rival = rivalOf(line, places, search);
  if (rival !== null && rival.worth > MOST_RIVAL_WORTH) return null;
  const turned = Math.hypot(1, line.slope);
  return {
    through: [middle[0] + line.middle * across[0], middle[1] + line.middle * across[1]],
    along: [(along[0] + line.slope * across[0]) / turned, (along[1] + line.slope * across[1]) / turned],
    rms: 0,
  };
}

/** Share of a side along which an edge is looked for. */
const INSET = 0.86;
/** Half squared deviations that an edge along all of a side is worth. */
const SIDE_WORTH = 6;

function footOn({ through, along }: Line, [x, y]: Vec2): Vec2 {
  const way = (x - through[0]) * along[0] + (y - through[1]) * along[1];
  return [through[0] + way * along[0], through[1] + way * along[1]];
}

const distance = (a: Vec2, b: Vec2): number => Math.hypot(a[0] - b[0], a[1] - b[1]);
