// A marker: a black square with its white cells left out. mm, about the middle of the page.

import type { Vec2 } from '@cairnmark/geometry';
import type { Marker } from '@cairnmark/photo';
import { isWhite, MARKER_CELLS, MARKER_SIDE_MM } from '@cairnmark/photo';
import type { Fill } from '../page/page.ts';
import { BLACK } from '../page/page.ts';
import { rectangle, ringPath } from '../page/shapes.ts';

/** White cells side by side are left out as one piece: between two of them a screen or a printer might leave a hair. */
export function markerMark(marker: Marker): Fill {
  const [left, bottom] = marker.centreMm.map((mm) => mm - MARKER_SIDE_MM / 2) as [number, number];
  const at = (corner: Corner): Vec2 => [left + corner.column * CELL_MM, bottom + (MARKER_CELLS - corner.row) * CELL_MM];
  const holes = ringsOf(marker).map((ring) => ringPath(ring.map(at)));
  return { kind: 'fill', grey: BLACK, paths: [rectangle([left, bottom], MARKER_SIDE_MM, MARKER_SIDE_MM), ...holes] };
}

const CELL_MM = MARKER_SIDE_MM / MARKER_CELLS;

/** Where lines between cells cross: rows from the top, columns from the left. */
interface Corner {
  readonly row: number;
  readonly column: number;
}

interface Side {
  readonly from: Corner;
  readonly to: Corner;
}

/** The rims of the white, clockwise round it, against the square: corner by corner of the cells. */
function ringsOf(marker: Marker): readonly (readonly Corner[])[] {
  const sides = whiteSides(marker);
  const rings: Corner[][] = [];
  for (let first = sides.pop(); first !== undefined; first = sides.pop()) {
    const ring = [first.from];
    let { to } = first;
    while (!isSame(to, first.from)) {
      const next = sides.findIndex(({ from }) => isSame(from, to));
      const [side] = sides.splice(next, 1);
      ring.push(to);
      to = side?.to ?? first.from;
    }
    rings.push(ring);
  }
  return rings;
}

/** The sides of white cells behind which there is black, each clockwise round its cell. */
function whiteSides(marker: Marker): Side[] {
  const sides: Side[] = [];
  for (let row = 0; row < MARKER_CELLS; row += 1) {
    for (let column = 0; column < MARKER_CELLS; column += 1) {
      if (!isWhite(marker, row, column)) continue;
      const corner = (down: number, right: number): Corner => ({ row: row + down, column: column + right });
      if (!isWhite(marker, row - 1, column)) sides.push({ from: corner(0, 0), to: corner(0, 1) });
      if (!isWhite(marker, row, column + 1)) sides.push({ from: corner(0, 1), to: corner(1, 1) });
      if (!isWhite(marker, row + 1, column)) sides.push({ from: corner(1, 1), to: corner(1, 0) });
      if (!isWhite(marker, row, column - 1)) sides.push({ from: corner(1, 0), to: corner(0, 0) });
    }
  }
  return sides;
}

const isSame = (a: Corner, b: Corner): boolean => a.row === b.row && a.column === b.column;
