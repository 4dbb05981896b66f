// Where the paper of a ground sheet ends, on the table: of the lines along which colour steps outside the markers, the one that most
// places agree on.

import type { Vec2 } from '@cairnmark/geometry';
import type { Camera } from '../camera/camera.ts';
import { imagePoint, planePoint } from '../camera/camera.ts';
import { colourSteps } from '../image/colour-step.ts';
import type { Photo } from '../image/photo.ts';
import { votedLine } from '../numbers/voted-line.ts';
import {
  LEAST_COLOUR_STEP,
  LEAST_EDGE_SUPPORT,
  MOST_STEPS,
  PAPER_EDGE_FURTHER_MM,
  PAPER_EDGE_NEARER_MM,
  PAPER_LINE_MM,
} from '../tolerance.ts';

export interface PaperEdge {
  /** From the middle of the sheet, mm, at the middle of the edge. */
  readonly awayMm: number;
  /** Share of the side along which it shows. */
  readonly support: number;
}

/** The edge in the direction `way` (of length 1, along an axis), expected at `awayMm`, on a side that reaches `halfMm` both ways. */
export function paperEdge(photo: Photo, camera: Camera, way: Vec2, awayMm: number, halfMm: number): PaperEdge | null {
  const places = Array.from({ length: PLACES }, (_, k) => {
    const along = halfMm * INSET * ((2 * (k + 0.5)) / PLACES - 1);
    return { along, values: stepsAt(photo, camera, way, awayMm, along) };
  });
  const line = votedLine(places, {
    leastApart: halfMm,
    mostSlope: MOST_SLOPE,
    nearness: PAPER_LINE_MM,
    cost: () => 0,
  });
  if (line === null || line.support < LEAST_EDGE_SUPPORT) return null;
  return { awayMm: line.middle, support: line.support };
}

const PLACES = 36;
/** Share of a side, from its middle, within which places lie. */
const INSET = 0.92;
/** A print may lie askew on its paper by a few millimetres. */
const MOST_SLOPE = 0.02;

/** Distances from the middle of the sheet at which colour steps, on the line across the edge at `alongMm`. */
function stepsAt(photo: Photo, camera: Camera, way: Vec2, awayMm: number, alongMm: number): readonly number[] {
  const on = (away: number): Vec2 => [way[0] * away - way[1] * alongMm, way[1] * away + way[0] * alongMm];
  const shown = (away: number): Vec2 | null => imagePoint(camera, [...on(away), 0]);
  const [from, to] = [shown(awayMm - PAPER_EDGE_NEARER_MM), shown(awayMm + PAPER_EDGE_FURTHER_MM)];
  if (from === null || to === null) return [];
  const middle: Vec2 = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const across: Vec2 = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  return colourSteps(photo, middle, across, length / 2, LEAST_COLOUR_STEP, MOST_STEPS).flatMap(({ offsetPx }) => {
    const at = planePoint(camera, [middle[0] + offsetPx * across[0], middle[1] + offsetPx * across[1]], 0);
    return at === null ? [] : [at[0] * way[0] + at[1] * way[1]];
  });
}
