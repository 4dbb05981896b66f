// At which scale a ground sheet was printed: the edges of the paper itself against the markers on it. "Fit to page" at 97 % costs 6 %
// of every area; the paper's size does not change with the print.

import type { Result } from '@cairnmark/geometry';
import { failure, success } from '@cairnmark/geometry';
import type { GroundSheet } from '../camera/fit-camera.ts';
import type { FittedCamera } from '../camera/fitted-camera.ts';
import { paperSizeMm } from '../camera/sheet.ts';
import type { Photo } from '../image/photo.ts';
import type { PhotoIssue } from '../issues.ts';
import { issue } from '../issues.ts';
import { MOST_PRINT_OFF, PAPER_CUT_SIGMA_MM } from '../tolerance.ts';
import type { PaperEdge } from './paper-edge.ts';
import { paperEdge } from './paper-edge.ts';

export interface PrintScale {
  /** Printed over nominal: 0.97 when the sheet was fitted to a page at 97 %. */
  readonly scale: number;
  readonly sigma: number;
  /** Told when it is further from 1 than print and measurement explain. */
  readonly warning: PhotoIssue | null;
}

/** `camera`: as fitted with `sheet.printScale`. For a sheet of one page: where pages overlap, their edges say nothing. */
export function measurePrintScale(
  photo: Photo,
  camera: FittedCamera,
  { paper, pages, printScale }: GroundSheet,
): Result<PrintScale, PhotoIssue> {
  const notFound = failure([issue('sheet-edges-not-found', 'show-whole-sheet')]);
  if (pages !== 1) return notFound;
  const [across, along] = paperSizeMm(paper);
  const upright = [-1, 1].map((side) => paperEdge(photo, camera, [side, 0], across / 2, along / 2));
  const level = [-1, 1].map((side) => paperEdge(photo, camera, [0, side], along / 2, across / 2));
  // The camera takes the markers for `printScale` of their size; paper that shows larger was printed smaller.
  const ratios = [ratioOf(upright, across), ratioOf(level, along)].filter((ratio) => ratio !== null);
  if (ratios.length === 0) return notFound;
  const weight = ratios.reduce((sum, { sigma }) => sum + sigma ** -2, 0);
  const scale = printScale * (ratios.reduce((sum, { ratio, sigma }) => sum + ratio * sigma ** -2, 0) / weight);
  const sigma = weight ** -0.5;
  const off = Math.abs(scale - 1) > MOST_PRINT_OFF + sigma;
  const warning = off ? issue('print-scale-off', 'print-at-full-size', [], { scale, sigma }) : null;
  return success({ scale, sigma, warning });
}

/** True size of the paper over the size it seems to have, from two edges that face each other. */
function ratioOf(
  edges: readonly (PaperEdge | null)[],
  sizeMm: number,
): { readonly ratio: number; readonly sigma: number } | null {
  const [near, far] = edges;
  if (!(near && far)) return null;
  const seenMm = near.awayMm + far.awayMm;
  const sigmaMm = Math.SQRT2 * PAPER_CUT_SIGMA_MM;
  return { ratio: sizeMm / seenMm, sigma: sigmaMm / sizeMm };
}
