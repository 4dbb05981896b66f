// Where the paper of a ground sheet ends, on the table: of the lines along which colour steps outside the markers, the one that most
// places agree on.

import type { Vec2 } from '@cairnmark/geometry';
import type { Camera } from '../camera/camera.ts';
import { imagePoint, planePoint } from '../camera/camera.ts';
import { colourSteps } from '../image/colour-step.ts';
import type { Photo } from '../image/photo.ts';
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
  const steps = Array.from({ length: PLACES }, (_, k) => {
    const alongMm = halfMm * INSET * ((2 * (k + 0.5)) / PLACES - 1);
    return stepsAt(photo, camera, way, awayMm, alongMm).map((away) => ({ alongMm, away }));
  });
  const all = steps.flat();
  let best: { line: Line; support: number } | null = null;
  for (const first of all) {
    for (const second of all) {
      if (second.alongMm - first.alongMm < halfMm) continue;
      const slope = (second.away - first.away) / (second.alongMm - first.alongMm);
      if (Math.abs(slope) > MOST_SLOPE) continue;
      const line = { slope, middle: first.away - slope * first.alongMm };
      const support = steps.filter((place) => place.some((step) => offLine(line, step) <= PAPER_LINE_MM)).length;
      if (support > (best?.support ?? 0)) best = { line, support };
    }
  }
  if (best === null || best.support < LEAST_EDGE_SUPPORT * PLACES) return null;
  const { line, support } = best;
  const on = all.filter((step) => offLine(line, step) <= PAPER_LINE_MM);
  return { awayMm: middleOf(on), support: support / PLACES };
}

interface Line {
  readonly slope: number;
  readonly middle: number;
}

const PLACES = 36;
/** Share of a side, from its middle, within which places lie. */
const INSET = 0.92;
/** A print may lie askew on its paper by a few millimetres. */
const MOST_SLOPE = 0.02;

const offLine = ({ slope, middle }: Line, { alongMm, away }: { alongMm: number; away: number }): number =>
  Math.abs(away - middle - slope * alongMm);

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

/** The value of the straight line through the steps, by least squares, at the middle of the side. */
function middleOf(steps: readonly { alongMm: number; away: number }[]): number {
  const count = steps.length;
  const along = steps.reduce((sum, { alongMm }) => sum + alongMm, 0) / count;
  const away = steps.reduce((sum, step) => sum + step.away, 0) / count;
  let [xx, xy] = [0, 0];
  for (const step of steps) {
    xx += (step.alongMm - along) ** 2;
    xy += (step.alongMm - along) * (step.away - away);
  }
  return away - (xx > 0 ? xy / xx : 0) * along;
}
