// Finds a plain sheet of paper on a darker table: the largest area whiter than some level whose border is a quadrilateral, but for
// what stands before it. Which level parts paper from table differs from photo to photo, so a ladder of them is tried.

import type { Vec2 } from '@cairnmark/geometry';
import { outerBorders } from '../image/borders.ts';
import type { Mask } from '../image/dark.ts';
import { edgePoints } from '../image/edge.ts';
import { linearOf } from '../image/linear.ts';
import type { Grey, Photo, Plane } from '../image/photo.ts';
import { whitenessOf } from '../image/photo.ts';
import { crossing, lineThrough } from '../numbers/line.ts';
import {
  LEAST_CONTRAST,
  LEAST_PAPER_SHARE,
  LEAST_SHEET_SHARE,
  SHEET_LEVELS,
  SHEET_SIDE_SAMPLES,
} from '../tolerance.ts';
import type { Quad } from './quadrilateral.ts';
import { quadrilateralOf, sidesOf } from './quadrilateral.ts';

export interface FoundSheet {
  readonly widthPx: number;
  readonly heightPx: number;
  /** Clockwise as seen, px. */
  readonly corners: Quad;
  /** Points of the paper's edge along the side that begins at each corner, px. */
  readonly edges: readonly (readonly Vec2[])[];
}

/** Null where no such sheet shows. */
export function findSheet(photo: Photo): FoundSheet | null {
  const grey = whitenessOf(photo);
  const linear = linearOf(grey);
  const least = LEAST_SHEET_SHARE * grey.width;
  const quads = SHEET_LEVELS.flatMap((level) =>
    outerBorders(brightMask(grey, level), least, 4 * (grey.width + grey.height)).flatMap((border) => {
      const quad = quadrilateralOf(border, SLACK_SHARE * border.length, least, LEAST_PAPER_SHARE);
      return quad === null || reachesBorder(quad, grey) ? [] : [quad];
    }),
  );
  for (const quad of quads.sort((a, b) => areaOf(b) - areaOf(a))) {
    const sheet = refined(linear, quad);
    if (sheet !== null) return sheet;
  }
  return null;
}

/** What ends where the picture ends does not show whole. */
const reachesBorder = (quad: Quad, { width, height }: Grey): boolean =>
  quad.some(([x, y]) => Math.min(x, y, width - x, height - y) < 2);

/** Of the length of a border in pixels (half its numbers): what a lens and a curled corner bend a side by. */
const SLACK_SHARE = 0.005;

function refined(plane: Plane, rough: Quad): FoundSheet | null {
  let corners = rough;
  let edges: readonly (readonly Vec2[])[] = [];
  for (const reachPx of [6, 4]) {
    // Paper is bright inside, and edges are looked for as rises: from the far end back.
    edges = sidesOf(corners).map(([from, to]) =>
      edgePoints(plane, to, from, { reachPx, samples: SHEET_SIDE_SAMPLES, inset: 0.03, leastRise: LEAST_CONTRAST / 2 }),
    );
    if (edges.some((points) => points.length < LEAST_PAPER_SHARE * SHEET_SIDE_SAMPLES)) return null;
    const lines = edges.map((points) => lineThrough(points, 0.5));
    const met = corners.map((_, k) => {
      const [before, after] = [lines[(k + 3) % 4], lines[k]];
      return before && after ? crossing(before, after) : null;
    });
    const [a, b, c, d] = met;
    if (!(a && b && c && d)) return null;
    corners = [a, b, c, d];
  }
  return { widthPx: plane.width, heightPx: plane.height, corners, edges };
}

function brightMask({ width, height, data }: Grey, level: number): Mask {
  const stride = width + 2;
  const mask = new Uint8Array(stride * (height + 2));
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) {
      if ((data[y * width + x] ?? 0) > level) mask[(y + 1) * stride + x + 1] = 1;
    }
  }
  return { stride, rows: height + 2, data: mask };
}

function areaOf(quad: Quad): number {
  return quad.reduce((sum, [x, y], k) => {
    const [nextX, nextY] = quad[(k + 1) % 4] ?? [x, y];
    return sum + (x * nextY - nextX * y) / 2;
  }, 0);
}
