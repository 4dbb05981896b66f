// How bright the sheet is at a point of the table.

import type { Marker } from '@cairnmark/photo';
import { isWhite, MARKER_CELLS, MARKER_SIDE_MM, markersOf } from '@cairnmark/photo';
import type { Scene } from './scene.ts';

/** Share of light; null beside the paper. */
export function sheetLight({ paper, pages, printScale }: Scene, x: number, y: number): number | null {
  const [across, along] = PAPERS[paper];
  for (const { page, middleMm, turnRad } of pages) {
    const [dx, dy] = [x - middleMm[0], y - middleMm[1]];
    const [c, s] = [Math.cos(turnRad), Math.sin(turnRad)];
    const [px, py] = [c * dx + s * dy, -s * dx + c * dy];
    if (Math.abs(px) > across / 2 || Math.abs(py) > along / 2) continue;
    return inked(MARKERS[page] ?? [], px / printScale, py / printScale) ? INK : PAPER;
  }
  return null;
}

const PAPERS = { a4: [297, 210], letter: [279.4, 215.9] } as const;
const [PAPER, INK] = [0.8, 0.03];
const MARKERS: readonly (readonly Marker[])[] = [0, 1, 2, 3].map((page) => markersOf(page));

function inked(markers: readonly Marker[], x: number, y: number): boolean {
  for (const marker of markers) {
    const [fromLeft, fromTop] = [
      x - marker.centreMm[0] + MARKER_SIDE_MM / 2,
      marker.centreMm[1] + MARKER_SIDE_MM / 2 - y,
    ];
    if (fromLeft < 0 || fromTop < 0 || fromLeft >= MARKER_SIDE_MM || fromTop >= MARKER_SIDE_MM) continue;
    const cell = MARKER_SIDE_MM / MARKER_CELLS;
    return !isWhite(marker, Math.floor(fromTop / cell), Math.floor(fromLeft / cell));
  }
  return false;
}
