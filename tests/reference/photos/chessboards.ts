// Real photographs: chessboards, the camera fitted to the inner corners at the border of the grid alone, and lengths between all of
// them measured with it. Which squares the board has is published (BOARD), so nothing of the camera need be known.

import type { Camera } from '@cairnmark/photo';
import { fitPoints, planePoint } from '@cairnmark/photo';
import type { Point2 } from './camera-of-truth.ts';
import { BOARD, CHESSBOARDS, chessboardCorners } from './opencv.ts';

export interface MeasuredBoard {
  readonly name: string;
  readonly camera: Camera;
  /** Of each length its error, as a share. */
  readonly lengthsOff: readonly number[];
}

/** mm. Lengths as long as the footprint of a tower is wide. */
const [SHORTEST_MM, LONGEST_MM] = [125, 200];

const SIZE = { widthPx: 640, heightPx: 480 };

export function measuredBoards(): readonly MeasuredBoard[] {
  return chessboardCorners(CHESSBOARDS).map((pixels, k) => measured(CHESSBOARDS[k]!, pixels));
}

function measured(name: string, pixels: readonly Point2[]): MeasuredBoard {
  const grid = pixels.map((_, k): Point2 => {
    const [column, row] = [k % BOARD.columns, Math.floor(k / BOARD.columns)];
    // Rows go down the picture, y goes up the table.
    return [BOARD.squareMm * column, -BOARD.squareMm * row];
  });
  if (grid.length !== BOARD.columns * BOARD.rows) throw new Error(`no chessboard in ${name}`);
  const border = grid.flatMap(([x, y], k) => (atBorder(x, y) ? [k] : []));
  const camera = fitPoints(
    { ...SIZE, onTableMm: border.map((k) => grid[k]!), pixels: border.map((k) => pixels[k]!) },
    { focal35Mm: null },
  );
  if (camera === null) throw new Error(`no camera for ${name}`);
  const places = pixels.map((pixel) => planePoint(camera, pixel, 0)!);
  const lengthsOff = grid.flatMap((a, i) =>
    grid.slice(0, i).flatMap((b, j) => {
      const trueMm = apart(a, b);
      return trueMm < SHORTEST_MM || trueMm > LONGEST_MM ? [] : [apart(places[i]!, places[j]!) / trueMm - 1];
    }),
  );
  return { name, camera, lengthsOff };
}

const atBorder = (x: number, y: number): boolean =>
  x === 0 || y === 0 || x === BOARD.squareMm * (BOARD.columns - 1) || y === -BOARD.squareMm * (BOARD.rows - 1);

const apart = (a: Point2, b: Point2): number => Math.hypot(a[0] - b[0], a[1] - b[1]);
