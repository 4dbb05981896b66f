// Markers found in a photo, beside where the sheet has them.

import type { Vec2 } from '@cairnmark/geometry';
import type { FoundMarker } from '../find/find-markers.ts';
import type { Quad } from '../find/quadrilateral.ts';
import { MARKER_SIDE_MM } from '../ground-sheet.ts';
import { markerOf, pageOf } from '../marker-list.ts';
import type { Seen } from './agreeing.ts';
import type { PagePlace } from './sheet.ts';
import { onTable } from './sheet.ts';

/** Those that belong to one of the pages; printed `printScale` times as large as they should be. */
export function seenMarkers(
  markers: readonly FoundMarker[],
  places: readonly PagePlace[],
  printScale: number,
): readonly Seen[] {
  return markers.flatMap(({ id, corners }) => {
    const page = pageOf(id);
    const place = places.find((one) => one.page === page);
    const centre = markerOf(id)?.centreMm;
    if (place === undefined || centre === undefined) return [];
    const onPageMm = cornersAbout(centre, printScale);
    const [a, b, c, d] = onPageMm;
    const onTableMm: Quad = [onTable(place, a), onTable(place, b), onTable(place, c), onTable(place, d)];
    return [{ id, page, onPageMm, onTableMm, cornersPx: corners }];
  });
}

/** Upper left, upper right, lower right, lower left, as printed. */
function cornersAbout([x, y]: Vec2, printScale: number): Quad {
  const half = MARKER_SIDE_MM / 2;
  const at = (dx: number, dy: number): Vec2 => [printScale * (x + dx), printScale * (y + dy)];
  return [at(-half, half), at(half, half), at(half, -half), at(-half, -half)];
}
