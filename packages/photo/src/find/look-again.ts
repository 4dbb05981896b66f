// A second look for markers, where a first fit of the camera says that they are. Seen low or blurred, thin borders break up and
// are not followed round, but their sides and their pattern are there.

import type { Vec2 } from '@cairnmark/geometry';
import type { Seen } from '../camera/agreeing.ts';
import type { Camera } from '../camera/camera.ts';
import { imagePoint } from '../camera/camera.ts';
import { shiftedQuad } from '../camera/shifted-quad.ts';
import { isWhite, MARKER_CELLS } from '../ground-sheet.ts';
import { linearOf } from '../image/linear.ts';
import type { Photo } from '../image/photo.ts';
import { greyOf } from '../image/photo.ts';
import { markerOf } from '../marker-list.ts';
import { LEAST_CONTRAST, LEAST_LIKENESS } from '../tolerance.ts';
import { cellsOf, paperAndBorder } from './cells.ts';
import type { FoundMarker } from './find-markers.ts';
import type { Quad } from './quadrilateral.ts';
import { refineQuad } from './refine-quad.ts';

/** Markers at `expected` (their `cornersPx` are not looked at) that show whole in the photo. */
export function lookAgain(
  photo: Photo,
  camera: Camera,
  bloomPx: number,
  expected: readonly Pick<Seen, 'id' | 'onTableMm'>[],
): readonly FoundMarker[] {
  const grey = greyOf(photo);
  const linear = linearOf(grey);
  return expected.flatMap(({ id, onTableMm }) => {
    const rough = quadAt(camera, onTableMm);
    if (rough === null) return [];
    const quad = refineQuad(linear, shiftedQuad(rough, bloomPx));
    if (quad === null) return [];
    const cells = cellsOf(grey, quad);
    const { paper, border } = paperAndBorder(cells);
    if (paper - border < LEAST_CONTRAST || likeness(cells, id) < LEAST_LIKENESS) return [];
    return [{ id, corners: quad, wrongBits: 0, contrast: paper - border }];
  });
}

function quadAt(camera: Camera, onTableMm: Quad): Quad | null {
  const [a, b, c, d] = onTableMm.map(([x, y]) => imagePoint(camera, [x, y, 0]));
  if (!(a && b && c && d)) return null;
  const inside = ([x, y]: Vec2): boolean => x > 0 && y > 0 && x < camera.widthPx && y < camera.heightPx;
  return [a, b, c, d].every(inside) ? [a, b, c, d] : null;
}

/** Correlation (Pearson) of the cells, the paper about them included, with what is printed: 1 is the very same. */
function likeness(cells: readonly (readonly number[])[], id: number): number {
  const marker = markerOf(id);
  if (marker === undefined) return 0;
  const pairs = cells.flatMap((row, r) =>
    row.map((value, c) => {
      const paper = r === 0 || c === 0 || r > MARKER_CELLS || c > MARKER_CELLS;
      return [value, paper || isWhite(marker, r - 1, c - 1) ? 1 : 0] as const;
    }),
  );
  const mean = (k: 0 | 1): number => pairs.reduce((sum, pair) => sum + pair[k], 0) / pairs.length;
  const [x, y] = [mean(0), mean(1)];
  let [xx, xy, yy] = [0, 0, 0];
  for (const [value, printed] of pairs) {
    xx += (value - x) ** 2;
    xy += (value - x) * (printed - y);
    yy += (printed - y) ** 2;
  }
  return xy / Math.sqrt(xx * yy);
}
