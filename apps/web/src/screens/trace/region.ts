// The part of a photo in which the sheet and the build on it show: shown alone, it is some two to three times as large.

import type { Vec2 } from '@cairnmark/geometry';
import type { FittedCamera, PaperId } from '@cairnmark/photo';
import { imagePoint, onTable, paperSizeMm } from '@cairnmark/photo';

/** px of the photo. */
export interface Region {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Null camera: the whole photo. */
export function regionOf(
  size: { readonly width: number; readonly height: number },
  camera: FittedCamera | null,
): Region {
  const whole = { x: 0, y: 0, width: size.width, height: size.height };
  if (camera === null) return whole;
  const seen = camera.places.flatMap((place) =>
    CORNERS.flatMap(([x, y]) => {
      const [across, along] = paperSizeMm(PAPER);
      const foot = onTable(place, [(x * across) / 2, (y * along) / 2]);
      const head = onTable(place, [(x * across) / 4, (y * along) / 4]);
      const pixels = [imagePoint(camera, [...foot, 0]), imagePoint(camera, [...head, HIGH_MM])];
      return pixels.flatMap((pixel) => (pixel === null ? [] : [pixel]));
    }),
  );
  const [xs, ys] = [seen.map(([u]) => u), seen.map(([, v]) => v)];
  const [left, right] = [
    Math.max(0, Math.floor(Math.min(...xs)) - ROOM_PX),
    Math.min(size.width, Math.ceil(Math.max(...xs)) + ROOM_PX),
  ];
  const [top, bottom] = [
    Math.max(0, Math.floor(Math.min(...ys)) - ROOM_PX),
    Math.min(size.height, Math.ceil(Math.max(...ys)) + ROOM_PX),
  ];
  return right - left < LEAST_PX || bottom - top < LEAST_PX
    ? whole
    : { x: left, y: top, width: right - left, height: bottom - top };
}

const CORNERS: readonly Vec2[] = [
  [-1, -1],
  [1, -1],
  [1, 1],
  [-1, 1],
];
/** The longer of the two papers. */
const PAPER: PaperId = 'a4';
/** mm. Few builds on a sheet are higher; what is, is seen as far as the photo goes. */
const HIGH_MM = 200;
const ROOM_PX = 24;
/** px. A camera that shows less than this is none to go by. */
const LEAST_PX = 120;
