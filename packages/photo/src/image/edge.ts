// Where brightness steps, to a fraction of a pixel, along a line across an edge: the middle of the rise, weighted by its steepness
// (a centroid of the derivative; common practice, no source).

import type { Vec2 } from '@cairnmark/geometry';
import type { Plane } from './photo.ts';
import { brightnessAt } from './sample.ts';

export interface EdgeSearch {
  /** How far to both sides of the given line an edge is looked for, pixels. */
  readonly reachPx: number;
  /** Lines across, over the whole side. */
  readonly samples: number;
  /** Share of the side left out at each end, where corners blur. */
  readonly inset: number;
  /** Steps of brightness that an edge must rise by, outwards. */
  readonly leastRise: number;
}

/** Points of the edge beside the side from `from` to `to`, brighter on the left of that way as seen (y down); some may be missing. */
export function edgePoints(plane: Plane, from: Vec2, to: Vec2, search: EdgeSearch): Vec2[] {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.hypot(dx, dy);
  const outward: Vec2 = [dy / length, -dx / length];
  const found: Vec2[] = [];
  for (let k = 0; k < search.samples; k += 1) {
    const share = search.inset + ((1 - 2 * search.inset) * (k + 0.5)) / search.samples;
    const at: Vec2 = [from[0] + share * dx, from[1] + share * dy];
    const offset = riseAlong(plane, at, outward, search);
    if (offset !== null) found.push([at[0] + offset * outward[0], at[1] + offset * outward[1]]);
  }
  return found;
}

const STEP_PX = 0.5;
/** Pixels to both sides of the steepest place that belong to the rise. */
const RISE_PX = 1.5;

function riseAlong(plane: Plane, at: Vec2, way: Vec2, { reachPx, leastRise }: EdgeSearch): number | null {
  const count = Math.round(reachPx / STEP_PX);
  const profile: number[] = [];
  for (let k = -count; k <= count + 1; k += 1) {
    const offset = (k - 0.5) * STEP_PX;
    profile.push(brightnessAt(plane, at[0] + offset * way[0], at[1] + offset * way[1]));
  }
  const rises = profile.slice(1).map((high, k) => high - (profile[k] ?? 0));
  let steepest = 0;
  rises.forEach((rise, k) => {
    if (rise > (rises[steepest] ?? 0)) steepest = k;
  });
  const reach = RISE_PX / STEP_PX;
  let [sum, moment] = [0, 0];
  for (let k = Math.max(0, steepest - reach); k <= Math.min(rises.length - 1, steepest + reach); k += 1) {
    const rise = Math.max(0, rises[k] ?? 0);
    sum += rise;
    moment += rise * (k - count) * STEP_PX;
  }
  return sum < leastRise ? null : moment / sum;
}
